package tiewright.draw;

import java.util.List;
import tiewright.event.ClubId;

/**
 * Clubs of one town that could not be kept apart.
 *
 * @param rounds the rounds of the pool in which they meet, in order; the numbers were drawn among those with the
 *     smallest sum of such rounds
 */
public record SharedTown(Cause cause, String pool, String town, List<ClubId> clubs, List<Integer> rounds) {
    /** Why no allowed draw keeps them apart. */
    public enum Cause {
        /** The town has more clubs than there are pools. */
        MORE_CLUBS_THAN_POOLS,
        /** The rule for seeds puts them into the same pool. */
        SEEDS,
        /** All pools taken together: the sizes and the seeds leave no other draw. */
        NO_DRAW_WITHOUT
    }

    public SharedTown {
        clubs = List.copyOf(clubs);
        rounds = List.copyOf(rounds);
    }
}
