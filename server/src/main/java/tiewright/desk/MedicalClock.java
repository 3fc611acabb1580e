package tiewright.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.event.RubberNo;
import tiewright.event.Tie;

/**
 * How long a stopped rubber may stand under the conditions. At its end the referee decides; the clock itself ends nothing.
 *
 * @param court where it is, if it was called
 * @param warnsAt two minutes before the end (common practice, no source), or at once where there are fewer
 */
public record MedicalClock(
        Tie tie, RubberNo rubber, Optional<String> court, Instant since, Instant warnsAt, Instant endsAt) {
    private static final Duration WARNING = Duration.ofMinutes(2);

    /** How far it has run. */
    public enum State {
        RUNS,
        WARNS,
        OVER
    }

    /** Every rubber of the tie that stands still, in order. */
    public static List<MedicalClock> of(Tie tie, Conditions conditions) {
        List<MedicalClock> clocks = new ArrayList<>();
        tie.stopped().forEach((rubber, since) -> {
            Instant end = since.plus(Duration.ofMinutes(conditions.medicalMinutes()));
            Instant warning = end.minus(WARNING).isBefore(since) ? since : end.minus(WARNING);
            clocks.add(new MedicalClock(
                    tie,
                    rubber,
                    Optional.ofNullable(tie.calls().get(rubber)).map(Tie.Call::court),
                    since,
                    warning,
                    end));
        });
        return clocks;
    }

    public State state(Instant now) {
        return !now.isBefore(endsAt) ? State.OVER : !now.isBefore(warnsAt) ? State.WARNS : State.RUNS;
    }
}
