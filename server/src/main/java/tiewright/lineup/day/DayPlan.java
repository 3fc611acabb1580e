package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.optaplanner.core.config.solver.EnvironmentMode;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.lineup.Budget;

/**
 * A sheet for each tie that is still ahead today, so that the promises of the day are kept and as much as possible of the
 * captain's aims is.
 *
 * @param ties in the order in which they are played
 * @param rubbers of each player by the end of the day, those before counted
 * @param missing rubbers missing to what was promised, by player; nobody named = all kept
 * @param tooMany ties in a row beyond what the captain wanted, by player
 * @param proven every plan of the kept sheets was tried
 * @param allSheets every legal sheet of every tie was looked at
 */
public record DayPlan(
        List<Planned> ties,
        Map<PlayerId, Integer> rubbers,
        Map<PlayerId, Integer> missing,
        Map<PlayerId, Integer> tooMany,
        boolean proven,
        boolean allSheets) {
    /** Steps of the search unless more are asked for. */
    public static final int USUAL_STEPS = 40_000;

    /** Plans that are all tried, where there are no more. */
    static final long MOST_PLANS = 10_000;

    public DayPlan {
        ties = List.copyOf(ties);
        rubbers = java.util.Collections.unmodifiableMap(new TreeMap<>(rubbers));
        missing = java.util.Collections.unmodifiableMap(new TreeMap<>(missing));
        tooMany = java.util.Collections.unmodifiableMap(new TreeMap<>(tooMany));
    }

    /**
     * One tie of the plan.
     *
     * @param worth of the captain's aim with everybody rested
     * @param cost what it gives away against the best sheet for this tie alone
     * @param bits what it would teach; 0 unless that was wanted
     */
    public record Planned(TieId tie, Sheet sheet, double worth, double cost, double bits) {}

    /** Empty where a tie has no legal sheet that grants every wish. */
    public static Optional<DayPlan> of(DayProblem day, Budget budget) {
        List<DaySheets> sheets = new ArrayList<>();
        for (int tie = 0; tie < day.ties().size(); tie++) {
            sheets.add(DaySheets.of(day, tie, budget.stop()));
        }
        if (sheets.isEmpty() || sheets.stream().anyMatch(tie -> tie.sheets().isEmpty())) {
            return Optional.empty();
        }
        boolean few = EveryDay.count(sheets) <= MOST_PLANS;
        List<DaySheet> best = few ? EveryDay.best(day, sheets) : polished(day, sheets, budget);
        return Optional.of(plan(day, sheets, best, few));
    }

    private static List<DaySheet> polished(DayProblem day, List<DaySheets> sheets, Budget budget) {
        return Polishing.of(
                day,
                sheets,
                DaySolver.solve(
                                day,
                                sheets.stream().map(DaySheets::firsts).toList(),
                                budget,
                                EnvironmentMode.REPRODUCIBLE)
                        .ties()
                        .stream()
                        .map(PlannedTie::sheet)
                        .toList(),
                budget.stop());
    }

    private static DayPlan plan(DayProblem day, List<DaySheets> sheets, List<DaySheet> best, boolean proven) {
        List<Planned> ties =
                best.stream().map(sheet -> planned(day, sheets, sheet)).toList();
        Map<PlayerId, Integer> rubbers = new TreeMap<>();
        Map<PlayerId, Integer> missing = new TreeMap<>();
        Map<PlayerId, Integer> tooMany = new TreeMap<>();
        DayScore judge = new DayScore(day);
        for (int i = 0; i < judge.players().size(); i++) {
            int player = i;
            PlayerId id = judge.players().get(player);
            rubbers.put(
                    id,
                    day.before(id).rubbers()
                            + best.stream()
                                    .mapToInt(sheet -> sheet.rubbers().get(player))
                                    .sum());
            note(missing, id, judge.missing(player, best));
            note(tooMany, id, judge.tooManyInARow(player, best));
        }
        return new DayPlan(
                ties, rubbers, missing, tooMany, proven, sheets.stream().allMatch(DaySheets::complete));
    }

    private static Planned planned(DayProblem day, List<DaySheets> sheets, DaySheet sheet) {
        double most = sheets.get(sheet.tie()).sheets().stream()
                .mapToDouble(DaySheet::worth)
                .max()
                .orElseThrow();
        return new Planned(
                day.ties().get(sheet.tie()).id(), sheet.sheet(), sheet.worth(), most - sheet.worth(), sheet.bits());
    }

    private static void note(Map<PlayerId, Integer> map, PlayerId player, int count) {
        if (count > 0) {
            map.put(player, count);
        }
    }
}
