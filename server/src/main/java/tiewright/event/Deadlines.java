package tiewright.event;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.LateSheet;

/** When the sheets of an exchange must be in. */
public final class Deadlines {
    private static final Duration THE_MINUTE_ITSELF = Duration.ofMinutes(1);

    private Deadlines() {}

    /**
     * Sheets: the published start less the minutes of the conditions. Decider: see {@link DeciderClock}; empty until the
     * tie is level.
     */
    public static Optional<Instant> of(Event event, ExchangeId exchange) {
        return event.tie(exchange.tie())
                .flatMap(
                        tie -> exchange.kind() == SheetKind.RUBBERS ? beforeStart(event, tie) : afterLevel(event, tie));
    }

    /**
     * From this moment on a first sheet is not taken any more. The whole minute of the deadline is still in time, for that is what
     * the hall's clock shows; then comes the grace, where the conditions give one.
     */
    public static Instant closes(Instant deadline, Conditions conditions) {
        Duration grace = conditions.lateSheet() == LateSheet.GRACE
                ? Duration.ofMinutes(conditions.graceMinutes())
                : Duration.ZERO;
        return deadline.plus(THE_MINUTE_ITSELF).plus(grace);
    }

    /** The last minute, as the hall's clock shows it, in which a first sheet is still taken. */
    public static Instant lastMinute(Instant deadline, Conditions conditions) {
        return closes(deadline, conditions).minus(THE_MINUTE_ITSELF);
    }

    private static Optional<Instant> beforeStart(Event event, Tie tie) {
        return event.startsAt(tie)
                .map(start -> start.minus(event.conditions().sheetDeadlineMinutes(), ChronoUnit.MINUTES));
    }

    private static Optional<Instant> afterLevel(Event event, Tie tie) {
        return DeciderClock.of(tie, event.conditions()).deadline();
    }
}
