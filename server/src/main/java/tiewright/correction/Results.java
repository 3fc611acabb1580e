package tiewright.correction;

import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.SlotSource;
import tiewright.standings.PoolTables;
import tiewright.standings.Row;
import tiewright.standings.Standings;
import tiewright.standings.Table;

/** Who comes from where by the results alone, whatever was signed or ruled. */
final class Results {
    private Results() {}

    /** Empty while the pool or the tie is not finished, and while only a lot could say. */
    static Optional<ClubId> of(Event event, SlotSource source) {
        return switch (source.kind()) {
            case POOL_PLACE -> atPlace(event, source.of(), source.place());
            case WINNER, LOSER -> source.sent(event);
        };
    }

    static Table table(Event event, String pool) {
        return Standings.of(PoolTables.input(event, pool));
    }

    /** The order of a finished pool; empty while a tie or a lot is missing. */
    static Optional<List<ClubId>> order(Event event, String pool) {
        Table table = table(event, pool);
        return table.isProvisional() || !table.lotsToDraw().isEmpty() ? Optional.empty() : Optional.of(table.order());
    }

    private static Optional<ClubId> atPlace(Event event, String pool, int place) {
        if (!event.pools().containsKey(pool)) {
            return Optional.empty();
        }
        Table table = table(event, pool);
        return table.isProvisional()
                ? Optional.empty()
                : table.rows().stream()
                        .filter(row -> row.place() == place && !row.onlyALotParts())
                        .map(Row::club)
                        .findFirst();
    }
}
