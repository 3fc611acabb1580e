package tiewright.lineup.day;

import java.util.List;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import tiewright.lineup.Budget;
import tiewright.search.Solving;

/**
 * Looks for the best plan of a day by simulated annealing over the sheets of its ties. Reproducible for
 * the same steps and seed; a step is a plan tried, for near the end hardly any is taken.
 */
final class DaySolver {
    /** A broken promise, one percentage point of a tie. */
    private static final String STARTING_TEMPERATURE = "1hard/10000000soft";

    private DaySolver() {}

    static DayPlanning solve(DayProblem day, List<DaySheets> sheets, Budget budget, EnvironmentMode mode) {
        return Solving.run(config(budget, mode), new DayPlanning(day, sheets), budget.stop(), budget.steps());
    }

    static SolverConfig config(Budget budget, EnvironmentMode mode) {
        LocalSearchPhaseConfig annealing = new LocalSearchPhaseConfig()
                .withAcceptorConfig(
                        new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(STARTING_TEMPERATURE))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                .withMoveSelectorConfig(new ChangeMoveSelectorConfig());
        annealing.setTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit((long) budget.steps()));
        SolverConfig config = new SolverConfig()
                .withSolutionClass(DayPlanning.class)
                .withEntityClasses(PlannedTie.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintProviderClass(DayConstraints.class)
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
                .withEnvironmentMode(mode)
                .withRandomSeed(budget.seed())
                .withPhaseList(List.of(annealing));
        budget.time().ifPresent(time -> config.withTerminationConfig(new TerminationConfig().withSpentLimit(time)));
        return config;
    }
}
