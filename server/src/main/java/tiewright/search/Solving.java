package tiewright.search;

import java.util.function.Consumer;
import org.optaplanner.core.api.score.Score;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import org.optaplanner.core.impl.phase.scope.AbstractPhaseScope;
import org.optaplanner.core.impl.phase.scope.AbstractStepScope;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** Runs a search that can be stopped and says how far it is. */
public final class Solving {
    private Solving() {}

    /** @param most the steps after which it is all done */
    public static <S> S run(SolverConfig config, S start, Stop stop, int most) {
        return run(config, start, stop, most, better -> {});
    }

    /** @param better hears of every better answer's score, on the thread that searches */
    public static <S> S run(SolverConfig config, S start, Stop stop, int most, Consumer<Score<?>> better) {
        DefaultSolver<S> solver =
                (DefaultSolver<S>) SolverFactory.<S>create(config).buildSolver();
        Runnable end =
                solver::terminateEarly; // in vain before the search has begun: hence the look at each phase and step
        solver.addPhaseLifecycleListener(new Watching<>(solver, stop, most));
        solver.addEventListener(found -> better.accept(found.getNewBestScore()));
        stop.onPress(end);
        try {
            return solver.solve(start);
        } finally {
            stop.forget(end);
        }
    }

    /** Tells the stop how far the search is, and ends it once the stop is pressed. */
    private static final class Watching<S> extends PhaseLifecycleListenerAdapter<S> {
        private final DefaultSolver<S> solver;
        private final Stop stop;
        private final int most;

        Watching(DefaultSolver<S> solver, Stop stop, int most) {
            this.solver = solver;
            this.stop = stop;
            this.most = most;
        }

        @Override
        public void phaseStarted(AbstractPhaseScope<S> phase) {
            endIfPressed();
        }

        @Override
        public void stepEnded(AbstractStepScope<S> step) {
            stop.reached(
                    (int) Math.min(most, step.getPhaseScope().getSolverScope().getScoreCalculationCount()));
            endIfPressed();
        }

        private void endIfPressed() {
            if (stop.isPressed()) {
                solver.terminateEarly();
            }
        }
    }
}
