package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;

/** Every plan of a small day, one after the other: the answer where there are few, and the judge of the search. */
final class EveryDay {
    private EveryDay() {}

    /** How many plans there are; {@link Long#MAX_VALUE} where that is too many to say. */
    static long count(List<DaySheets> sheets) {
        long count = 1;
        for (DaySheets tie : sheets) {
            count = count > Long.MAX_VALUE / 10_000
                    ? Long.MAX_VALUE
                    : count * Math.max(1, tie.sheets().size());
            if (count == Long.MAX_VALUE) {
                return count;
            }
        }
        return count;
    }

    /** The first of the best. */
    static List<DaySheet> best(DayProblem day, List<DaySheets> sheets) {
        DayScore judge = new DayScore(day);
        List<DaySheet> best = new ArrayList<>();
        HardSoftLongScore[] most = {HardSoftLongScore.of(Long.MIN_VALUE / 2, 0)};
        go(sheets, new ArrayList<>(), plan -> {
            HardSoftLongScore score = score(judge, plan);
            if (score.compareTo(most[0]) > 0) {
                most[0] = score;
                best.clear();
                best.addAll(plan);
            }
        });
        return best;
    }

    private static void go(
            List<DaySheets> sheets, List<DaySheet> plan, java.util.function.Consumer<List<DaySheet>> visitor) {
        if (plan.size() == sheets.size()) {
            visitor.accept(plan);
            return;
        }
        for (DaySheet sheet : sheets.get(plan.size()).sheets()) {
            plan.add(sheet);
            go(sheets, plan, visitor);
            plan.remove(plan.size() - 1);
        }
    }

    /** What the constraints add up to, once more, with plain loops. */
    static HardSoftLongScore score(DayScore judge, List<DaySheet> plan) {
        long hard = 0;
        long soft = 0;
        for (int player = 0; player < judge.players().size(); player++) {
            hard -= judge.missing(player, plan) + judge.tooManyInARow(player, plan);
            soft -= judge.tired(player, plan);
        }
        for (DaySheet sheet : plan) {
            soft += judge.aim(sheet) + (judge.day().wanted().learning() ? judge.learning(sheet) : 0);
        }
        return HardSoftLongScore.of(hard, soft);
    }
}
