package tiewright.timetable;

import java.time.Duration;
import java.util.Optional;
import tiewright.search.Stop;

/**
 * How long a search may go on: so many steps, or until the time is up if that comes first, or until it is stopped. The same
 * steps and seed give the same plan as long as neither time nor {@link Stop} cuts in.
 *
 * @param steps plans looked at, 1 or more
 * @param time empty = no limit
 * @param progress hears of every better plan, on the thread that searches
 */
public record Budget(int steps, Optional<Duration> time, long seed, Stop stop, Progress progress) {
    /** Enough for a day of forty ties, with room. */
    public static final int USUAL_STEPS = 30_000;

    public Budget {
        if (steps < 1) {
            throw new IllegalArgumentException("a search of " + steps + " steps");
        }
    }

    public static Budget ofSteps(int steps, long seed) {
        return new Budget(steps, Optional.empty(), seed, new Stop(), better -> {});
    }

    public static Budget usual(long seed) {
        return ofSteps(USUAL_STEPS, seed);
    }

    /** More for more ties, so that a small day is planned at once. */
    public static Budget usual(PlanProblem problem, long seed) {
        return usual(seed).enoughFor(problem);
    }

    /** At most as many steps as so many ties need. */
    public Budget enoughFor(PlanProblem problem) {
        return new Budget(Math.min(steps, 3_000 + 500 * problem.ties().size()), time, seed, stop, progress);
    }

    public Budget within(Duration limit) {
        return new Budget(steps, Optional.of(limit), seed, stop, progress);
    }

    public Budget telling(Progress listener) {
        return new Budget(steps, time, seed, stop, listener);
    }

    /** Hears how a search comes on. */
    public interface Progress {
        void better(PlanScore score);
    }
}
