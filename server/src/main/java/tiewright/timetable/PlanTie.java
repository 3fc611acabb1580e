package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.RubberNo;
import tiewright.event.Stage;
import tiewright.event.TieId;

/**
 * A tie that is still to be played, or the rest of one.
 *
 * @param round 1 is the first round of its pool or of the knockout
 * @param home empty while the club is not known
 * @param rubbers those left to play, in order; at least one
 * @param oneAtATime two of its rubbers may have a player in common, so they are never played at once
 * @param after ties that must be over before this one can begin, for they send a club here
 */
public record PlanTie(
        TieId id,
        Stage stage,
        Optional<String> pool,
        int round,
        Optional<ClubId> home,
        Optional<ClubId> away,
        List<RubberNo> rubbers,
        boolean oneAtATime,
        Set<TieId> after) {
    public PlanTie {
        rubbers = List.copyOf(rubbers);
        after = Set.copyOf(after);
        if (rubbers.isEmpty()) {
            throw new IllegalArgumentException("nothing is left of tie " + id);
        }
    }

    /** The clubs that are known. */
    public List<ClubId> clubs() {
        return Stream.of(home, away).flatMap(Optional::stream).toList();
    }

    /** The same tie with other rubbers left. */
    public PlanTie withRubbers(List<RubberNo> left) {
        return new PlanTie(id, stage, pool, round, home, away, left, oneAtATime, after);
    }

    PlanTie withAfter(Set<TieId> sources) {
        return new PlanTie(id, stage, pool, round, home, away, rubbers, oneAtATime, sources);
    }

    boolean isInPool(PlanTie other) {
        return pool.isPresent() && pool.equals(other.pool);
    }
}
