package tiewright.timetable;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import tiewright.conditions.Conditions;

/**
 * A step of the ladder of lateness: from this moment on so much may be claimed in all. Who claims, and what is given, is for
 * people.
 *
 * @param rubbers how many rubbers; 0 where it is less or more than rubbers
 */
public record LateStep(What what, int rubbers, Instant since) {
    private static final Duration EACH = Duration.ofMinutes(15);

    /** What may be claimed. */
    public enum What {
        GAME,
        RUBBERS,
        TIE
    }

    /** The ladder of these conditions from the moment on at which the clock started, the first step first. */
    static List<LateStep> ladder(Conditions conditions, Instant clock) {
        Duration late = Duration.ofMinutes(conditions.lateMinutes());
        Instant first = clock.plus(late);
        return switch (conditions.lateLoss()) {
            case RUBBER -> List.of(new LateStep(What.RUBBERS, 1, first));
            case A_RUBBER_EACH_15 -> each(conditions.rubbers(), first);
            case GAME_THEN_RUBBER ->
                List.of(
                        new LateStep(What.GAME, 0, first),
                        new LateStep(What.RUBBERS, 1, first.plus(late)),
                        new LateStep(What.TIE, 0, first.plus(late.multipliedBy(2))));
        };
    }

    private static List<LateStep> each(int rubbers, Instant first) {
        List<LateStep> steps = new ArrayList<>();
        for (int rubber = 1; rubber <= rubbers; rubber++) {
            steps.add(new LateStep(What.RUBBERS, rubber, first.plus(EACH.multipliedBy(rubber - 1L))));
        }
        return steps;
    }
}
