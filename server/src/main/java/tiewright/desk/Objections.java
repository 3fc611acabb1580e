package tiewright.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Card;
import tiewright.event.Disputes;
import tiewright.event.Event;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** How long captains can object to a finished table, and which protests about it wait. An official may sign at any time. */
public final class Objections {
    private Objections() {}

    /** The end of the time for objections; empty while the pool goes on, and where the conditions promise none. */
    public static Optional<Instant> until(Event event, String pool) {
        if (event.conditions().objectionMinutes() == 0
                || !PoolEnd.of(event, pool).unfinished().isEmpty()) {
            return Optional.empty();
        }
        return last(event.tiesOfPool(pool).stream())
                .map(last -> last.plus(Duration.ofMinutes(event.conditions().objectionMinutes())));
    }

    /** The same for the knockout, from its last card; empty where nothing of it was played. */
    public static Optional<Instant> untilOfKnockout(Event event) {
        return last(event.ties().values().stream().filter(tie -> tie.stage() != Stage.POOL))
                .filter(last -> event.conditions().objectionMinutes() > 0)
                .map(last -> last.plus(Duration.ofMinutes(event.conditions().objectionMinutes())));
    }

    private static Optional<Instant> last(Stream<Tie> ties) {
        return ties.flatMap(tie -> tie.cards().values().stream())
                .flatMap(card -> card.entries().stream())
                .map(Card.Entry::receivedAt)
                .max(Comparator.naturalOrder());
    }

    /** Protests about a tie of the pool, or about no tie by a club of it, that nobody has decided. */
    static List<Disputes.Protest> open(Event event, String pool) {
        List<TieId> ties = event.tiesOfPool(pool).stream().map(tie -> tie.id()).toList();
        return event.disputes().openProtests().stream()
                .filter(protest -> protest.made()
                        .tie()
                        .map(ties::contains)
                        .orElse(event.pools()
                                .getOrDefault(pool, List.of())
                                .contains(protest.made().club())))
                .toList();
    }
}
