package tiewright.lineup.tie;

import java.util.List;
import java.util.Optional;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import org.optaplanner.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveListFactoryConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.SwapMoveSelectorConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.phase.PhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import tiewright.lineup.Budget;
import tiewright.search.Solving;

/**
 * Looks for the best sheet by simulated annealing over the seats. Reproducible: the same problem, steps and seed give the same
 * sheet.
 */
final class LineupSolver {
    /** One breach, a third of a rubber: hot enough to leave any local best, whatever the captain wants of the tie. */
    private static final String HOT = "1hard/300000000medium/1soft";

    /** One breach, five percentage points: from the best so far once more, looking closer. */
    private static final String WARM = "1hard/50000000medium/1soft";

    private LineupSolver() {}

    /** The best legal sheet found; empty if none was. */
    static Optional<int[]> best(Board board, Budget budget) {
        LineupPlan best = solve(board, budget, config(budget, EnvironmentMode.REPRODUCIBLE));
        return best.score().hardScore() == 0 ? Optional.of(best.line()) : Optional.empty();
    }

    static LineupPlan solve(Board board, Budget budget, SolverConfig config) {
        return Solving.run(config, new LineupPlan(board), budget.stop(), budget.steps());
    }

    static SolverConfig config(Budget budget, EnvironmentMode mode) {
        SolverConfig config = new SolverConfig()
                .withSolutionClass(LineupPlan.class)
                .withEntityClasses(Seat.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintProviderClass(LineupConstraints.class)
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
                .withEnvironmentMode(mode)
                .withRandomSeed(budget.seed())
                .withPhaseList(List.of(
                        new ConstructionHeuristicPhaseConfig(),
                        annealing(HOT, budget.steps()),
                        annealing(WARM, budget.steps())));
        budget.time().ifPresent(time -> config.withTerminationConfig(new TerminationConfig().withSpentLimit(time)));
        return config;
    }

    private static PhaseConfig<?> annealing(String startingTemperature, int steps) {
        LocalSearchPhaseConfig annealing = new LocalSearchPhaseConfig()
                .withAcceptorConfig(
                        new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(startingTemperature))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
        annealing.setTerminationConfig(new TerminationConfig().withStepCountLimit(steps));
        annealing.setMoveSelectorConfig(new UnionMoveSelectorConfig(List.of(
                new ChangeMoveSelectorConfig().withFixedProbabilityWeight(3.0),
                new SwapMoveSelectorConfig().withFixedProbabilityWeight(5.0),
                new MoveListFactoryConfig()
                        .withMoveListFactoryClass(RubberSwaps.class)
                        .withFixedProbabilityWeight(2.0),
                new MoveListFactoryConfig()
                        .withMoveListFactoryClass(PairSeatings.class)
                        .withFixedProbabilityWeight(3.0))));
        return annealing;
    }
}
