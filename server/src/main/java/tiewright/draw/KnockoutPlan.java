package tiewright.draw;

import java.util.List;
import java.util.Optional;
import tiewright.event.SlotSource;

/**
 * A drawn knockout.
 *
 * @param seed the spoken seed as it was hashed
 * @param lines 2, 4, 8, 16 or 32 lines from the top; an empty one is a bye
 * @param ties by round, from the top; the tie for third place, {@code P3}, before the final {@code F}
 * @param steps how the lines were drawn, in order
 * @param samePoolFirst pools two of whose clubs meet in the first round, because no allowed draw avoids it
 * @param sameHalf pools whose first and second stand in one half, because no allowed draw avoids it
 */
public record KnockoutPlan(
        String seed,
        List<Optional<SlotSource>> lines,
        List<PlannedTie> ties,
        List<DrawStep> steps,
        List<String> samePoolFirst,
        List<String> sameHalf) {
    public KnockoutPlan {
        lines = List.copyOf(lines);
        ties = List.copyOf(ties);
        steps = List.copyOf(steps);
        samePoolFirst = List.copyOf(samePoolFirst);
        sameHalf = List.copyOf(sameHalf);
    }
}
