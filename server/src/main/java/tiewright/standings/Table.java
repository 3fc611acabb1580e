package tiewright.standings;

import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;

/**
 * The order of the clubs at this moment.
 *
 * @param rows by place, then in the order of the entries
 * @param tiesLeft ties that still have to be finished; the table is provisional while there are any
 */
public record Table(List<Row> rows, int tiesLeft) {
    public Table {
        rows = List.copyOf(rows);
    }

    public boolean isProvisional() {
        return tiesLeft > 0;
    }

    /** Empty for a club that is not in the table, such as one that withdrew and was annulled. */
    public Optional<Row> row(ClubId club) {
        return rows.stream().filter(row -> row.club().equals(club)).findFirst();
    }

    public List<ClubId> order() {
        return rows.stream().map(Row::club).toList();
    }

    /** The groups that share a place until a lot is drawn among them, best place first. */
    public List<List<ClubId>> lotsToDraw() {
        return rows.stream()
                .filter(Row::onlyALotParts)
                .map(row -> row.decidedBy().deciding().level())
                .distinct()
                .toList();
    }
}
