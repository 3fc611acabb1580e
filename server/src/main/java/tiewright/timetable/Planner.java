package tiewright.timetable;

import java.util.Optional;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** Makes the order of play. */
public final class Planner {
    private Planner() {}

    /**
     * The best plan found within the budget. What cannot be planned at all is said before any search, with the smallest set
     * that cannot hold together; a day that is too short is planned all the same, so that one sees by how much.
     */
    public static Planned plan(PlanProblem problem, Budget budget) {
        Optional<Infeasible> nonsense = InputFaults.of(problem);
        if (nonsense.isPresent()) {
            return new Planned.Impossible(nonsense.get(), Optional.empty());
        }
        Board board = new Board(problem);
        Optional<Spot[]> first = Packing.of(board);
        if (first.isEmpty()) {
            return new Planned.Impossible(Conflicts.withoutRoom(board), Optional.empty());
        }
        Plan plan = search(board, first.get(), budget);
        if (plan.isPlayable()) {
            return new Planned.Found(plan);
        }
        Optional<Infeasible> why = Conflicts.of(board);
        return why.isPresent() ? new Planned.Impossible(why.get(), Optional.of(plan)) : new Planned.Broken(plan);
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
        return Placing.plan(board, best.spots(), best.dutyNumbers(), budget.seed());
    }
}
