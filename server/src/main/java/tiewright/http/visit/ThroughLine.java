package tiewright.http.visit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.standings.Row;
import tiewright.standings.Table;
import tiewright.wording.Words;

/** The line in a pool's table below which nobody goes on, as the knockout takes its places. */
public final class ThroughLine {
    private final VisibleEvent event;
    private final String pool;
    private final int last;

    ThroughLine(VisibleEvent event, String pool) {
        this.event = event;
        this.pool = pool;
        this.last = places().mapToInt(SlotSource::place).max().orElse(0);
    }

    private Stream<SlotSource> places() {
        return knockout()
                .flatMap(tie -> Stream.of(Side.values()).flatMap(side -> tie.slot(side).from().stream()))
                .filter(this::isOfThePool);
    }

    private Stream<Tie> knockout() {
        return event.ties().stream().filter(tie -> tie.stage() == Stage.KNOCKOUT);
    }

    private boolean isOfThePool(SlotSource source) {
        return source.kind() == SlotSource.Kind.POOL_PLACE && source.of().equals(pool);
    }

    /** What the line below this place says; empty where none is drawn, as when two clubs share the last place that goes on. */
    String below(int place, Table table) {
        boolean shared =
                table.rows().stream().filter(row -> row.place() == place).count() > 1;
        boolean isLast = place == last && last < table.rows().size();
        return isLast && !shared ? Words.say(event, "page-visit.go-on", "count", last, "round", round()) : "";
    }

    /** The first round that the places of the pool lead to. */
    private String round() {
        int first = knockout()
                .filter(tie -> Stream.of(Side.values())
                        .anyMatch(side ->
                                tie.slot(side).from().filter(this::isOfThePool).isPresent()))
                .mapToInt(Tie::round)
                .min()
                .orElse(0);
        return KnockoutRounds.code(event, first);
    }

    /** Who would come from a place of a pool if it ended now; empty before its first tie is finished, and for a shared place. */
    public static Optional<ClubId> wouldBe(SlotSource source, Table table) {
        List<Row> there = table.rows().stream()
                .filter(row -> row.place() == source.place())
                .toList();
        boolean begun = table.rows().stream().anyMatch(row -> row.rubbersWon() + row.rubbersLost() > 0);
        return begun && there.size() == 1 ? Optional.of(there.get(0).club()) : Optional.empty();
    }
}
