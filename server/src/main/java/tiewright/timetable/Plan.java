package tiewright.timetable;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.ClubId;
import tiewright.event.TieId;
import tiewright.event.TieProgress;

/**
 * An order of play.
 *
 * @param assignments by start, then court
 * @param breaches what it breaks, each said once; empty for a plan that can be played
 * @param bound no plan for this problem can end earlier
 * @param seed with which it was searched
 * @param moved published starts so near that they should stay but cannot, each with what stands in its way
 */
public record Plan(
        PlanProblem problem,
        List<Assignment> assignments,
        PlanScore score,
        List<Reason> breaches,
        LowerBound bound,
        long seed,
        List<Reason> moved) {
    public Plan {
        moved = List.copyOf(moved);
        assignments = List.copyOf(assignments);
        breaches = List.copyOf(breaches);
    }

    Plan boundBy(LowerBound other) {
        return new Plan(problem, assignments, score, breaches, other, seed, moved);
    }

    Plan with(List<Assignment> others) {
        return new Plan(problem, others, score, breaches, bound, seed, moved);
    }

    Plan moving(List<Reason> frozen) {
        return new Plan(problem, assignments, score, breaches, bound, seed, frozen);
    }

    public LocalTime finish() {
        return problem.start().plusMinutes(score.of(Part.LENGTH));
    }

    /** Slots from the first to the end of the last tie. */
    public int slots() {
        return Clock.roundedUp(score.of(Part.LENGTH), problem.slotMinutes());
    }

    /** It keeps everything that must hold and ends before the venue closes. */
    public boolean isPlayable() {
        return score.breaches() == 0 && score.of(Part.OVERRUN) == 0;
    }

    /** Its end is proven to be as early as any. */
    public boolean endsAtTheBound() {
        return score.breaches() == 0 && score.of(Part.LENGTH) <= bound.minutes();
    }

    public List<Assignment> of(TieId tie) {
        return assignments.stream()
                .filter(assignment -> assignment.tie().equals(tie))
                .toList();
    }

    public Optional<LocalTime> start(TieId tie) {
        return of(tie).stream().map(Assignment::start).findFirst();
    }

    /** The longest that the club waits between two of its ties, in minutes; 0 with fewer than two. */
    public int longestWait(ClubId club) {
        return Waits.of(this).longest(club);
    }

    /** Every rubber on its court, by slot, then court. */
    public List<Assignment.Line> lines() {
        return assignments.stream()
                .flatMap(assignment -> assignment.lines(problem.slotMinutes()).stream())
                .toList();
    }

    /** Why this tie begins when it does: what stood in the way of every earlier slot, or that nothing did. */
    public List<Reason> why(TieId tie) {
        return Why.of(this, tie);
    }

    /** What each part of the score means here, in the order in which they count. */
    public List<Reason> explained() {
        return Why.score(this);
    }

    /**
     * Deciders have no slot in a plan: how many are to be expected, of even clubs; empty where none can come.
     *
     * @param standing how each tie stands
     */
    public Optional<Reason> expectedDeciders(Function<TieId, Optional<TieProgress>> standing) {
        double expected = ExpectedDeciders.of(problem.ties(), standing);
        return expected > 0
                ? Optional.of(Reason.of("no-slot-for-deciders")
                        .with("count", ExpectedDeciders.said(expected))
                        .with("ties", problem.ties().size())
                        .with("minutes", problem.slotMinutes()))
                : Optional.empty();
    }
}
