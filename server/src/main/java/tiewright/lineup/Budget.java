package tiewright.lineup;

import java.time.Duration;
import java.util.Optional;
import tiewright.search.Stop;

/**
 * How long a search may go on: so many steps, or until the time is up if that comes first, or until it is stopped. The same
 * steps and seed give the same answer as long as neither time nor {@link Stop} cuts in.
 *
 * @param steps of the search, 1 or more
 * @param time empty = no limit
 */
public record Budget(int steps, Optional<Duration> time, long seed, Stop stop) {
    /** Enough for eight players and four rubbers, with room. */
    public static final int USUAL_STEPS = 2_000;

    public Budget {
        if (steps < 1) {
            throw new IllegalArgumentException("a search of " + steps + " steps");
        }
    }

    public static Budget ofSteps(int steps, long seed) {
        return new Budget(steps, Optional.empty(), seed, new Stop());
    }

    public static Budget usual(long seed) {
        return ofSteps(USUAL_STEPS, seed);
    }

    public Budget within(Duration limit) {
        return new Budget(steps, Optional.of(limit), seed, stop);
    }
}
