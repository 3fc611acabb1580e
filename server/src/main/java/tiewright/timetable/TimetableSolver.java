package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
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

/**
 * Betters an order of play by late acceptance (Burke and Bykov, Eur. J. Oper. Res. 258, 2017, from memory). Reproducible: the
 * same problem, steps and seed give the same plan.
 */
final class TimetableSolver {
  /** A step is taken if the plan is then no worse than this many steps ago. */
  private static final int MEMORY = 300;

  private TimetableSolver() {}

  static DayPlan solve(DayPlan first, Budget budget, SolverConfig config) {
    Solver<DayPlan> solver = SolverFactory.<DayPlan>create(config).buildSolver();
    Runnable stop = solver::terminateEarly; // in vain before the search has begun: hence the look at each better plan
    solver.addEventListener(better -> {
      budget.progress().better(TimetableWeights.read((org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore) better.getNewBestScore()));
      if (budget.stop().isPressed()) {
        solver.terminateEarly();
      }
    });
    budget.stop().onPress(stop);
    try {
      return solver.solve(first);
    } finally {
      budget.stop().forget(stop);
    }
  }

  static SolverConfig config(boolean umpires, Budget budget, EnvironmentMode mode) {
    LocalSearchPhaseConfig search = new LocalSearchPhaseConfig()
        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(MEMORY))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    search.setTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit((long) budget.steps()));
    search.setMoveSelectorConfig(moves(umpires));
    List<PhaseConfig> phases = new ArrayList<>();
    if (umpires) {
      phases.add(firstDuties());
    }
    phases.add(search);
    SolverConfig config = new SolverConfig()
        .withSolutionClass(DayPlan.class)
        .withEntityClasses(PlacedPiece.class, Duty.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig()
                .withConstraintProviderClass(TimetableConstraints.class)
                .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
        .withEnvironmentMode(mode)
        .withRandomSeed(budget.seed())
        .withPhaseList(phases);
    budget.time().ifPresent(time -> config.withTerminationConfig(new TerminationConfig().withSpentLimit(time)));
    return config;
  }

  private static MoveSelectorConfig<?> moves(boolean umpires) {
    List<MoveSelectorConfig> moves = new ArrayList<>();
    moves.add(new ChangeMoveSelectorConfig().withEntitySelectorConfig(new EntitySelectorConfig(PlacedPiece.class)).withFixedProbabilityWeight(4.0));
    moves.add(new SwapMoveSelectorConfig().withEntitySelectorConfig(new EntitySelectorConfig(PlacedPiece.class)).withFixedProbabilityWeight(6.0));
    if (umpires) {
      moves.add(new ChangeMoveSelectorConfig().withEntitySelectorConfig(new EntitySelectorConfig(Duty.class)).withFixedProbabilityWeight(4.0));
      moves.add(new SwapMoveSelectorConfig().withEntitySelectorConfig(new EntitySelectorConfig(Duty.class)).withFixedProbabilityWeight(2.0));
    }
    return new UnionMoveSelectorConfig(moves);
  }

  private static PhaseConfig<?> firstDuties() {
    return new ConstructionHeuristicPhaseConfig()
        .withEntityPlacerConfig(new QueuedEntityPlacerConfig()
            .withEntitySelectorConfig(new EntitySelectorConfig(Duty.class).withId("duty"))
            .withMoveSelectorConfigList(List.of(
                new ChangeMoveSelectorConfig().withEntitySelectorConfig(EntitySelectorConfig.newMimicSelectorConfig("duty")))));
  }
}
