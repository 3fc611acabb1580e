package tiewright.lineup;

import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import org.optaplanner.core.impl.phase.scope.AbstractStepScope;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** Runs a search that can be stopped and says how far it is. */
final class Solving {
  private Solving() {}

  static <S> S run(SolverFactory<S> factory, S start, Budget budget) {
    Solver<S> solver = factory.buildSolver();
    Runnable stop = solver::terminateEarly; // in vain before the search has begun: hence the look at each step
    ((DefaultSolver<S>) solver).addPhaseLifecycleListener(new PhaseLifecycleListenerAdapter<S>() {
      @Override
      public void stepEnded(AbstractStepScope<S> step) {
        budget.stop().reached((int) Math.min(budget.steps(), step.getPhaseScope().getSolverScope().getScoreCalculationCount()));
        if (budget.stop().isPressed()) {
          solver.terminateEarly();
        }
      }
    });
    budget.stop().onPress(stop);
    try {
      return solver.solve(start);
    } finally {
      budget.stop().forget(stop);
    }
  }
}
