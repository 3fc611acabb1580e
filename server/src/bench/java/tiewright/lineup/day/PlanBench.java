package tiewright.lineup.day;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.config.solver.EnvironmentMode;
import tiewright.event.TieId;
import tiewright.lineup.Budget;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.lineup.order.BlindBench;
import tiewright.rating.Strengths;
import tiewright.search.Stop;

/**
 * The plan of a day of twelve players and five ties: the search of five seconds beside as many plans by plain hill climbing, and
 * both against the best that anything found. Before it, {@link BlindBench}.
 */
public final class PlanBench {
    private static final int PLAYERS = 12;
    private static final int TIES = 5;

    private PlanBench() {}

    public static void run(long seed) {
        System.out.println("  seed " + seed);
        BlindBench.run(seed);
        day(seed);
    }

    private static void day(long seed) {
        DayProblem day = problem(new Random(seed));
        long start = System.nanoTime();
        double before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
        List<DaySheets> sheets = new ArrayList<>();
        for (int tie = 0; tie < TIES; tie++) {
            sheets.add(DaySheets.of(day, tie, new Stop()));
        }
        double laid = (System.nanoTime() - start) / 1e9;
        start = System.nanoTime();
        HardSoftLongScore found = search(day, sheets, DayPlan.USUAL_STEPS, seed);
        double searched = (System.nanoTime() - start) / 1e9;
        double processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9 - before;
        HardSoftLongScore climbed = climb(day, sheets, DayPlan.USUAL_STEPS, new Random(seed));
        HardSoftLongScore best = found.compareTo(climbed) > 0 ? found : climbed;
        for (int more = 1; more <= 3; more++) {
            HardSoftLongScore longer = search(day, sheets, 3 * DayPlan.USUAL_STEPS, seed + more);
            best = longer.compareTo(best) > 0 ? longer : best;
        }
        HardSoftLongScore all = DaySolver.solve(
                        day, sheets, Budget.ofSteps(3 * DayPlan.USUAL_STEPS, seed + 9), EnvironmentMode.REPRODUCIBLE)
                .score();
        best = all.compareTo(best) > 0 ? all : best;
        System.out.printf(
                Locale.ROOT,
                "  day plan, %d players, %d ties, %d sheets tried, %d kept, all looked at: %b%n",
                PLAYERS,
                TIES,
                sheets.stream().mapToLong(DaySheets::tried).sum(),
                sheets.stream().mapToInt(one -> one.sheets().size()).sum(),
                sheets.stream().allMatch(DaySheets::complete));
        System.out.printf(
                Locale.ROOT,
                "    laying out %.2f s, search of %d plans %.2f s on the clock; both %.2f s of processor%n",
                laid,
                DayPlan.USUAL_STEPS,
                searched,
                processor);
        System.out.printf(
                Locale.ROOT,
                "    search %s, hill climbing %s, best known %s (four searches of three times the plans, one of them over all kept sheets)%n",
                found,
                climbed,
                best);
        System.out.printf(
                Locale.ROOT,
                "    search below the best known: %.3f %%, hill climbing: %.3f %%%n",
                below(found, best),
                below(climbed, best));
    }

    /** As {@link DayPlan} does it. */
    private static HardSoftLongScore search(DayProblem day, List<DaySheets> sheets, int plans, long seed) {
        Budget budget = Budget.ofSteps(plans, seed);
        List<DaySheet> found = DaySolver.solve(
                        day, sheets.stream().map(DaySheets::firsts).toList(), budget, EnvironmentMode.REPRODUCIBLE)
                .ties()
                .stream()
                .map(PlannedTie::sheet)
                .toList();
        return EveryDay.score(new DayScore(day), Polishing.of(day, sheets, found, budget.stop()));
    }

    private static double below(HardSoftLongScore score, HardSoftLongScore best) {
        return score.hardScore() < best.hardScore()
                ? 100
                : 100.0 * (best.softScore() - score.softScore()) / best.softScore();
    }

    private static DayProblem problem(Random random) {
        Strengths strengths = Ties.random(random, PLAYERS);
        List<DayProblem.Ahead> ties = new ArrayList<>();
        for (int tie = 0; tie < TIES; tie++) {
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(4),
                    Ties.squad("a", PLAYERS),
                    Ties.squad("b", 8 + tie),
                    strengths,
                    LineupProblem.Against.UNKNOWN,
                    1);
            ties.add(new DayProblem.Ahead(TieId.of("T" + tie), problem, 1 - tie % 3 / 2.0, 540 + 45 * tie));
        }
        return new DayProblem(ties, Map.of(), new DayProblem.Wanted(3, Map.of(), 3, true), Freshness.Cost.USUAL);
    }

    /** One change at a time that is no worse, from the best sheet of each tie; again from elsewhere after a thousand in vain. */
    private static HardSoftLongScore climb(DayProblem day, List<DaySheets> sheets, int plans, Random random) {
        DayScore judge = new DayScore(day);
        List<DaySheet> plan =
                new ArrayList<>(sheets.stream().map(tie -> tie.sheets().get(0)).toList());
        HardSoftLongScore now = EveryDay.score(judge, plan);
        HardSoftLongScore best = now;
        int vain = 0;
        for (int tried = 0; tried < plans; tried++) {
            int tie = random.nextInt(plan.size());
            List<DaySheet> all = sheets.get(tie).sheets();
            DaySheet before = plan.set(tie, all.get(random.nextInt(all.size())));
            HardSoftLongScore score = EveryDay.score(judge, plan);
            vain = score.compareTo(now) > 0 ? 0 : vain + 1;
            if (score.compareTo(now) >= 0 || vain > 1_000) {
                now = score;
                vain = vain > 1_000 ? 0 : vain;
            } else {
                plan.set(tie, before);
            }
            best = now.compareTo(best) > 0 ? now : best;
        }
        return best;
    }
}
