package tiewright.timetable;

import java.util.Arrays;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** The judge as OptaPlanner asks for it: a duty that nobody has yet counts for nothing. */
public class PlainJudge implements EasyScoreCalculator<DayPlan, BendableLongScore> {
    @Override
    public BendableLongScore calculateScore(DayPlan plan) {
        Board board = plan.pieces().get(0).board();
        int[] duties = Placing.nobody(board);
        plan.duties().stream()
                .filter(duty -> duty.club() != null)
                .forEach(duty -> duties[duty.piece()] = duty.clubNumber());
        PlanScore score = Judge.of(board, plan.spots(), duties).score();
        long[] soft =
                Arrays.stream(Part.values()).mapToLong(part -> -score.of(part)).toArray();
        return BendableLongScore.of(new long[] {-score.breaches()}, soft);
    }
}
