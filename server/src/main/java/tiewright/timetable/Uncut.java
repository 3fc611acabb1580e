package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.conditions.Conditions;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.TieId;

/** A day before anything of it is cut, and how an option is made beside it. */
final class Uncut {
    private final Event event;
    private final PlanAsked asked;
    private final Budget budget;
    private final PlanProblem problem;
    private final Plan asIs;
    private final Told told;

    /**
     * What a cut costs.
     *
     * @param rubbers not played, or lost by halves
     * @param fairness what it does to the contest
     */
    record Price(List<TieId> notPlayed, double rubbers, List<Reason> fairness) {}

    Uncut(Event event, PlanAsked asked, Budget budget) {
        this.event = event;
        this.asked = asked;
        this.budget = budget;
        this.problem = PlanProblem.of(event, asked);
        this.asIs = plan(problem).orElseThrow(() -> new IllegalStateException("ask Replan.fault before"));
        this.told = new Told(event);
    }

    Event event() {
        return event;
    }

    PlanAsked asked() {
        return asked;
    }

    PlanProblem problem() {
        return problem;
    }

    /** Its plan as it is, whether it holds or not. */
    Plan asIs() {
        return asIs;
    }

    /** Empty where what is left cannot be planned at all. */
    Optional<Plan> plan(PlanProblem what) {
        Planned planned = Planner.plan(what, budget);
        return switch (planned.kind()) {
            case FOUND -> Optional.of(((Planned.Found) planned).plan());
            case BROKEN -> Optional.of(((Planned.Broken) planned).plan());
            case IMPOSSIBLE -> ((Planned.Impossible) planned).asIs();
        };
    }

    ReplanOption option(Cut cut, Optional<Conditions> conditions, Plan plan, Price price) {
        Set<ClubId> clubs = told.clubs(plan, price.notPlayed(), conditions.isPresent());
        return new ReplanOption(
                cut,
                conditions,
                plan,
                Optional.empty(),
                price.notPlayed(),
                price.fairness(),
                price.rubbers(),
                clubs,
                told.people(clubs));
    }
}
