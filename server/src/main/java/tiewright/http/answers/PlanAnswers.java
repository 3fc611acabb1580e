package tiewright.http.answers;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tiewright.desk.PublishPlan;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.timetable.Budget;
import tiewright.timetable.Infeasible;
import tiewright.timetable.PlanAsked;
import tiewright.timetable.PlanProblem;
import tiewright.timetable.Planned;
import tiewright.timetable.Planner;
import tiewright.timetable.Replan;
import tiewright.timetable.ReplanOption;

/** What the search for an order of play answers those who may publish one. Cannot be made for anybody else. */
public final class PlanAnswers {
    private final Event event;

    /** @throws IllegalStateException for anybody but the organiser and the referee */
    public PlanAnswers(Asker asker) {
        Role role = asker.event().viewer().role();
        if (role != Role.ORGANISER && role != Role.REFEREE) {
            throw new IllegalStateException("only the organiser or the referee may ask this");
        }
        this.event = asker.whole();
    }

    /**
     * Ways to go on.
     *
     * @param fault why there are none, where what was given contradicts itself
     */
    public record Ways(List<ReplanOption> options, Optional<Infeasible> fault) {}

    /** A search for an order of play over the event as it stands now. */
    public Function<Budget, Planned> planning(PlanAsked asked) {
        PlanProblem problem = PlanProblem.of(event, asked);
        return budget -> Planner.plan(problem, budget.enoughFor(problem));
    }

    /** How many minutes a tie, or one rubber of it, takes on so many courts. */
    public long minutes(TieId tie, Optional<RubberNo> rubber, int courts, PlanAsked asked) {
        PlanProblem problem = PlanProblem.of(event, asked);
        return (long) slots(tie, rubber, courts) * problem.slotMinutes();
    }

    private int slots(TieId tie, Optional<RubberNo> rubber, int courts) {
        int rubbers = rubber.isPresent()
                ? 1
                : event.tie(tie).map(one -> event.progress(one).left().size()).orElse(1);
        return Math.max(1, (rubbers + courts - 1) / Math.max(1, courts));
    }

    /** The clubs that its notice will concern. */
    public List<ClubId> concerned(PublishPlan plan) {
        return plan.concerned(event);
    }

    /** The clubs of which it asks to begin before a published start. */
    public List<ClubId> earlier(PublishPlan plan) {
        return plan.earlier(event);
    }

    /** How many ties it gives another time or court. */
    public int moves(PublishPlan plan) {
        return plan.moves(event).size();
    }

    /** It is the order of play as it stands. */
    public boolean isPublished(PublishPlan plan) {
        return plan.isPublished(event);
    }

    /** A search for ways to go on after something broke. */
    public Function<Budget, Ways> replanning(PlanAsked asked) {
        return budget -> new Ways(Replan.options(event, asked, budget), Replan.fault(event, asked));
    }
}
