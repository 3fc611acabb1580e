package tiewright.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Card;
import tiewright.event.Disputes;
import tiewright.event.Event;
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
        return event.tiesOfPool(pool).stream()
                .flatMap(tie -> tie.cards().values().stream())
                .flatMap(card -> card.entries().stream())
                .map(Card.Entry::receivedAt)
                .max(Comparator.naturalOrder())
                .map(last -> last.plus(Duration.ofMinutes(event.conditions().objectionMinutes())));
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
