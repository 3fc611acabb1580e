package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;

/** Short searches in which every score is worked out twice over: from scratch, and by the naive scorer. */
class LineupSmokeTest {
    @Test
    void constraints_and_the_naive_scorer_agree_at_every_step() {
        Random random = new Random(20);
        for (int i = 0; i < 12; i++) {
            LineupProblem problem = LineupSolverTest.randomTie(random);
            Board board = new Board(problem);
            Budget budget = Budget.ofSteps(40, i);
            SolverConfig config = LineupSolver.config(budget, EnvironmentMode.FULL_ASSERT);
            config.getScoreDirectorFactoryConfig()
                    .withAssertionScoreDirectorFactory(
                            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(NaiveScore.class));
            LineupPlan plan = LineupSolver.solve(board, budget, config);
            assertThat(plan.score()).as("tie %d", i).isEqualTo(new NaiveScore().calculateScore(plan));
        }
    }
}
