package tiewright.timetable;

import java.util.Optional;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** Makes the order of play. */
public final class Planner {
    private Planner() {}

    /**
     * The best plan found within the budget. What cannot be planned at all is said before any search, with the smallest set
     * that cannot hold together; a day that is too short is planned all the same, so that one sees by how much. Published starts
     * that are frozen but cannot stand are moved, and the plan says which.
     */
    public static Planned plan(PlanProblem problem, Budget budget) {
        Optional<Infeasible> nonsense = InputFaults.of(problem);
        if (nonsense.isPresent()) {
            return new Planned.Impossible(nonsense.get(), Optional.empty());
        }
        FrozenStarts frozen = FrozenStarts.of(problem);
        Board board = new Board(frozen.problem());
        Optional<Spot[]> first = Starts.best(board, Starts.USUAL_TRIES, budget.seed());
        if (first.isEmpty()) {
            return new Planned.Impossible(Conflicts.withoutRoom(board), Optional.empty());
        }
        Plan plan = proven(board, search(board, first.get(), budget)).moving(frozen.moved());
        if (plan.isPlayable()) {
            return new Planned.Found(plan);
        }
        Optional<Infeasible> why = Conflicts.of(board);
        return why.isPresent() ? new Planned.Impossible(why.get(), Optional.of(plan)) : new Planned.Broken(plan);
    }

    /** With a bound that is as late as the plan ends, where there is so little to place that everything earlier can be tried. */
    private static Plan proven(Board board, Plan plan) {
        int end = board.base() + Math.toIntExact(plan.score().of(Part.LENGTH));
        return plan.score().breaches() == 0
                        && !plan.endsAtTheBound()
                        && board.pieces().size() <= ExactSearch.FEW
                        && ExactSearch.plan(board, end - 1, ExactSearch.USUAL_STEPS) == ExactSearch.End.NONE
                ? plan.boundBy(Bounds.tried(board, end))
                : plan;
    }

    private static Plan search(Board board, Spot[] first, Budget budget) {
        boolean free = board.pieces().stream().anyMatch(piece -> piece.pin().isEmpty());
        if (!free) {
            return Placing.plan(board, first, Placing.nobody(board), budget.seed());
        }
        boolean umpires = board.problem().umpires();
        DayPlan best = TimetableSolver.solve(
                new DayPlan(board, first),
                budget,
                TimetableSolver.config(umpires, budget, EnvironmentMode.REPRODUCIBLE));
        int[] duties = best.dutyNumbers();
        return Placing.plan(board, MovedUp.of(board, best.spots(), duties), duties, budget.seed());
    }
}
