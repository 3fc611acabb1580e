package tiewright.desk;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.standings.Row;

/**
 * Orders clubs of different pools that nothing else parts: by place in the pool; then, because pools differ in size, by
 * difference of rubbers for each tie, difference of points for each tie; then by code. A club without a pool comes last.
 */
final class PoolRecord implements Comparator<ClubId> {
    private final Map<ClubId, Integer> places = new LinkedHashMap<>();
    private final Map<ClubId, String> pools = new LinkedHashMap<>();
    private final Map<ClubId, Row> rows = new LinkedHashMap<>();

    private PoolRecord() {}

    static PoolRecord of(Event event) {
        PoolRecord record = new PoolRecord();
        for (String pool : event.pools().keySet()) {
            List<Row> rows = PoolEnd.of(event, pool).table().rows();
            rows.forEach(row -> record.rows.put(row.club(), row));
            rows.forEach(row -> record.places.put(row.club(), row.place()));
            rows.forEach(row -> record.pools.put(row.club(), pool));
        }
        for (OfficialFact.TableSigned table : event.signedTables().values()) {
            for (int i = 0; i < table.order().size(); i++) {
                record.places.put(table.order().get(i), i + 1);
            }
        }
        return record;
    }

    boolean has(ClubId club) {
        return places.containsKey(club);
    }

    Collection<ClubId> clubs() {
        return places.keySet();
    }

    /** What two clubs differ in first. */
    enum Parting {
        PLACE("notices.final-by-place"),
        RUBBERS("notices.final-by-rubbers"),
        POINTS("notices.final-by-points"),
        CODE("notices.final-by-code");

        private final String code;

        Parting(String code) {
            this.code = code;
        }

        /** Of the sentence that says it. */
        String code() {
            return code;
        }
    }

    Parting parting(ClubId one, ClubId other) {
        return Stream.of(Parting.values())
                .filter(by -> compare(by, one, other) != 0)
                .findFirst()
                .orElse(Parting.CODE);
    }

    @Override
    public int compare(ClubId one, ClubId other) {
        return compare(parting(one, other), one, other);
    }

    private int compare(Parting by, ClubId one, ClubId other) {
        return switch (by) {
            case PLACE -> Integer.compare(place(one), place(other));
            case RUBBERS -> Double.compare(rubbers(other), rubbers(one));
            case POINTS -> Double.compare(points(other), points(one));
            case CODE -> one.compareTo(other);
        };
    }

    int place(ClubId club) {
        return places.getOrDefault(club, Integer.MAX_VALUE);
    }

    /** Empty for a club without a pool. */
    String pool(ClubId club) {
        return pools.getOrDefault(club, "");
    }

    double rubbers(ClubId club) {
        Row row = rows.get(club);
        return row == null ? 0 : (double) (row.rubbersWon() - row.rubbersLost()) / ties(row);
    }

    double points(ClubId club) {
        Row row = rows.get(club);
        return row == null ? 0 : (double) (row.pointsFor() - row.pointsAgainst()) / ties(row);
    }

    private static int ties(Row row) {
        return Math.max(1, row.tiesWon() + row.tiesDrawn() + row.tiesLost());
    }
}
