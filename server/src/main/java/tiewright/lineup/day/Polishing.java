package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import tiewright.search.Stop;

/**
 * Makes a plan of a day better by small changes until none helps: another sheet for one tie; or in two ties at once sheets in
 * which one rubber has gone from one player to another, as when two players change places between them.
 */
final class Polishing {
    private final DayScore judge;
    private final List<DaySheets> sheets;
    private final List<DaySheet> plan;
    private final Stop stop;
    private HardSoftLongScore most;

    private Polishing(DayProblem day, List<DaySheets> sheets, List<DaySheet> plan, Stop stop) {
        this.judge = new DayScore(day);
        this.sheets = sheets;
        this.plan = new ArrayList<>(plan);
        this.stop = stop;
        this.most = EveryDay.score(judge, plan);
    }

    static List<DaySheet> of(DayProblem day, List<DaySheets> sheets, List<DaySheet> plan, Stop stop) {
        Polishing polishing = new Polishing(day, sheets, plan, stop);
        while (!stop.isPressed() && (polishing.one() || polishing.two())) {
            // again from the better plan
        }
        return polishing.plan;
    }

    private boolean one() {
        boolean better = false;
        for (int tie = 0; tie < plan.size(); tie++) {
            for (DaySheet sheet : sheets.get(tie).sheets()) {
                DaySheet before = plan.set(tie, sheet);
                if (isBetter()) {
                    better = true;
                } else {
                    plan.set(tie, before);
                }
            }
        }
        return better;
    }

    private boolean two() {
        for (int tie = 0; tie < plan.size(); tie++) {
            for (int other = tie + 1; other < plan.size(); other++) {
                if (two(tie, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean two(int tie, int other) {
        DaySheet first = plan.get(tie);
        DaySheet second = plan.get(other);
        List<DaySheet> near = near(other, second);
        for (DaySheet one : near(tie, first)) {
            plan.set(tie, one);
            for (DaySheet two : near) {
                plan.set(other, two);
                if (isBetter()) {
                    return true;
                }
            }
            if (stop.isPressed()) {
                break;
            }
        }
        plan.set(tie, first);
        plan.set(other, second);
        return false;
    }

    private List<DaySheet> near(int tie, DaySheet from) {
        return sheets.get(tie).sheets().stream()
                .filter(sheet -> moved(sheet, from) == 2)
                .toList();
    }

    private static int moved(DaySheet one, DaySheet other) {
        int moved = 0;
        for (int player = 0; player < one.rubbers().size(); player++) {
            moved += Math.abs(one.rubbers().get(player) - other.rubbers().get(player));
        }
        return moved;
    }

    private boolean isBetter() {
        HardSoftLongScore score = EveryDay.score(judge, plan);
        if (score.compareTo(most) <= 0) {
            return false;
        }
        most = score;
        return true;
    }
}
