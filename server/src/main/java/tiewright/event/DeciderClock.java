package tiewright.event;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import tiewright.conditions.Conditions;

/**
 * The clock of a decider. It runs from the moment at which the tie is level. A reading that differs makes the tie undecided again:
 * the clock then stands still, once, and what is left of it runs on when the card is settled, so that neither a slip nor a
 * trick takes time from anybody or gives any. A reading that only confirms moves nothing.
 *
 * @param deadline when the pairs must be in; empty while the tie is not level
 * @param rest what is left while it stands still; empty while it runs
 */
public record DeciderClock(Optional<Instant> deadline, Optional<Duration> rest) {

    public static DeciderClock of(Tie tie, Conditions conditions) {
        Run run = new Run();
        tie.cards().values().stream()
                .flatMap(card -> card.entries().stream())
                .map(Card.Entry::receivedAt)
                .distinct()
                .sorted()
                .forEach(at -> run.at(at, TieProgress.of(tie.with(tie.course().until(at)), conditions)));
        Duration rest = Duration.ofMinutes(conditions.deciderMinutes()).minus(run.used);
        boolean level = TieProgress.of(tie, conditions).deciderNeeded();
        return new DeciderClock(
                run.since.filter(since -> level).map(since -> since.plus(rest)),
                run.isStopped() ? Optional.of(rest) : Optional.empty());
    }

    /** How long it ran so far. */
    private static final class Run {
        private Optional<Instant> since = Optional.empty();
        private Duration used = Duration.ZERO;
        private boolean stoppedOnce;

        void at(Instant at, TieProgress progress) {
            boolean held = !progress.held().isEmpty();
            if (progress.deciderNeeded()) {
                since = since.or(() -> Optional.of(at));
            } else if (held && since.isPresent() && !stoppedOnce) {
                used = used.plus(Duration.between(since.get(), at));
                since = Optional.empty();
                stoppedOnce = true;
            } else if (!held) {
                since = Optional.empty();
                used = Duration.ZERO;
                stoppedOnce = false;
            }
        }

        boolean isStopped() {
            return stoppedOnce && since.isEmpty();
        }
    }
}
