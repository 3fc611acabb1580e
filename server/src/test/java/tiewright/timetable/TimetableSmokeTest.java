package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import tiewright.Seed;

/** Short searches in which every score is worked out from scratch as well, and by plain loops that share nothing with the constraints. */
class TimetableSmokeTest {
    @Test
    void constraints_and_the_plain_judge_agree_at_every_step() {
        for (int round = 0; round < 12; round++) {
            Random random = Seed.random(round);
            PlanProblem problem = RandomProblems.any(random);
            Board board = new Board(problem);
            Budget budget = Budget.ofSteps(120, round);
            SolverConfig config = TimetableSolver.config(problem.umpires(), budget, EnvironmentMode.FULL_ASSERT);
            config.getScoreDirectorFactoryConfig()
                    .withAssertionScoreDirectorFactory(
                            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(PlainJudge.class));
            DayPlan plan =
                    TimetableSolver.solve(new DayPlan(board, Starts.plain(board).orElseThrow()), budget, config);
            assertThat(TimetableWeights.read(plan.score()))
                    .as(Seed.rerun(round))
                    .isEqualTo(Judge.of(board, plan.spots(), plan.dutyNumbers()).score());
        }
    }
}
