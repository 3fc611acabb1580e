package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import org.optaplanner.core.config.constructionheuristic.placer.QueuedEntityPlacerConfig;
import org.optaplanner.core.config.heuristic.selector.entity.EntitySelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.MoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
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
import tiewright.search.Solving;

/**
 * Betters an order of play: first by simulated annealing (Kirkpatrick, Gelatt and Vecchi, Science 220, 1983, from memory),
 * which leaves a plan that no small change betters, then by late acceptance (Burke and Bykov, Eur. J. Oper. Res. 258, 2017, from
 * memory), which is better at the small comforts of a large day. Reproducible: the same problem, steps and seed give the same plan.
 */
final class TimetableSolver {
    /** Hot enough at first to go through a breach or two, half an hour, some waits. */
    private static final String STARTING_TEMPERATURE = "[1]hard/[10/10/20/1/40/3/2]soft";

    /** Later a step is taken if the plan is then no worse than this many steps ago. */
    private static final int MEMORY = 300;

    private TimetableSolver() {}

    static DayPlan solve(DayPlan first, Budget budget, SolverConfig config) {
        return Solving.run(
                config,
                first,
                budget.stop(),
                budget.steps(),
                better -> budget.progress().better(TimetableWeights.read((BendableLongScore) better)));
    }

    @SuppressWarnings("rawtypes") // withPhaseList takes them so
    static SolverConfig config(boolean umpires, Budget budget, EnvironmentMode mode) {
        List<PhaseConfig> phases = new ArrayList<>();
        if (umpires) {
            phases.add(firstDuties());
        }
        phases.add(search(
                umpires,
                (budget.steps() + 1L) / 2,
                new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(STARTING_TEMPERATURE)));
        phases.add(search(umpires, budget.steps(), new LocalSearchAcceptorConfig().withLateAcceptanceSize(MEMORY)));
        SolverConfig config = new SolverConfig()
                .withSolutionClass(DayPlan.class)
                .withEntityClasses(PlacedPiece.class, Duty.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintProviderClass(TimetableConstraints.class)
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
                .withEnvironmentMode(mode)
                .withRandomSeed(budget.seed())
                .withPhaseList(phases);
        budget.time().ifPresent(time -> config.withTerminationConfig(new TerminationConfig().withSpentLimit(time)));
        return config;
    }

    /** @param until plans looked at since the beginning of the whole search, for OptaPlanner counts them over all phases */
    private static PhaseConfig<?> search(boolean umpires, long until, LocalSearchAcceptorConfig acceptor) {
        LocalSearchPhaseConfig search = new LocalSearchPhaseConfig()
                .withAcceptorConfig(acceptor)
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
        search.setTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(until));
        search.setMoveSelectorConfig(moves(umpires));
        return search;
    }

    @SuppressWarnings("rawtypes") // the union takes them so
    private static MoveSelectorConfig<?> moves(boolean umpires) {
        List<MoveSelectorConfig> moves = new ArrayList<>();
        moves.add(new ChangeMoveSelectorConfig()
                .withEntitySelectorConfig(new EntitySelectorConfig(PlacedPiece.class))
                .withFixedProbabilityWeight(4.0));
        moves.add(new SwapMoveSelectorConfig()
                .withEntitySelectorConfig(new EntitySelectorConfig(PlacedPiece.class))
                .withFixedProbabilityWeight(6.0));
        if (umpires) {
            moves.add(new ChangeMoveSelectorConfig()
                    .withEntitySelectorConfig(new EntitySelectorConfig(Duty.class))
                    .withFixedProbabilityWeight(4.0));
            moves.add(new SwapMoveSelectorConfig()
                    .withEntitySelectorConfig(new EntitySelectorConfig(Duty.class))
                    .withFixedProbabilityWeight(2.0));
        }
        return new UnionMoveSelectorConfig(moves);
    }

    private static PhaseConfig<?> firstDuties() {
        return new ConstructionHeuristicPhaseConfig()
                .withEntityPlacerConfig(new QueuedEntityPlacerConfig()
                        .withEntitySelectorConfig(new EntitySelectorConfig(Duty.class).withId("duty"))
                        .withMoveSelectorConfigList(List.of(new ChangeMoveSelectorConfig()
                                .withEntitySelectorConfig(EntitySelectorConfig.newMimicSelectorConfig("duty")))));
    }
}
