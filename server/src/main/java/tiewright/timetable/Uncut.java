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
    private final Optional<Plan> kept;
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
        this.kept = KeptOrder.of(event, asked, budget.seed())
                .filter(plan -> plan.score().breaches() <= asIs.score().breaches())
                .filter(plan -> plan.score().of(Part.OVERRUN) <= asIs.score().of(Part.OVERRUN))
                .map(plan -> plan.boundBy(bound(plan)));
        this.told = new Told(event);
    }

    /** That of the best plan, which stands on a grid of slots; what stays where it was published may end earlier than any slot does. */
    private LowerBound bound(Plan plan) {
        int base = Clock.minute(plan.problem().start());
        int minutes = Math.min(
                Clock.minute(asIs.bound().finish(), base) - base,
                Math.toIntExact(plan.score().of(Part.LENGTH)));
        return new LowerBound(
                Clock.time(base + minutes),
                Clock.roundedUp(minutes, problem.slotMinutes()),
                minutes,
                asIs.bound().because());
    }

    /** What was published, no tie elsewhere and none later than it must be; empty where nothing was, and where that breaks more or ends too late. */
    Optional<Plan> kept() {
        return kept;
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

    /** Everything as it was published where that can be kept, else the best plan of everything. */
    Plan unchanged() {
        return kept.orElse(asIs);
    }

    /** The best plan of everything, in whatever order and wherever, whether it holds or not. */
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
