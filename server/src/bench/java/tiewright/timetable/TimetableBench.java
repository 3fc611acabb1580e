package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import tiewright.bench.Timings;

/**
 * An order of play for 32 clubs, 16 courts and 5 rounds of four rubbers, side by side: how early it ends beside the lower bound, how
 * long it takes, and what a general constraint solver (Choco) makes of the same day in the same run.
 */
public final class TimetableBench {
    private static final int RUNS = 5;
    private static final int LANES = 4;
    private static final String LIMIT = "20s";

    private TimetableBench() {}

    public static void run(long seed) {
        System.out.println("  seed " + seed);
        day("four pools of eight, 10 minutes of rest", pools(4).withRest(10), seed);
        day("four pools of eight, 40 minutes of rest", pools(4).withRest(40), seed);
        day("one draw of 32, 10 minutes of rest", pools(1).withRest(10), seed);
        day("one draw of 32, 40 minutes of rest", pools(1).withRest(40), seed);
        day(
                "four pools of eight, each rubber on its own",
                Problems.rubberByRubber(16, pools(4).ties()).withRest(10),
                seed);
    }

    /** The first five rounds by the circle method: the last stays, the others move round. */
    private static PlanProblem pools(int pools) {
        List<PlanTie> ties = new ArrayList<>();
        int size = 32 / pools;
        int circle = size - 1;
        for (int pool = 0; pool < pools; pool++) {
            for (int round = 0; round < 5; round++) {
                for (int i = 0; i < size / 2; i++) {
                    int one = i == 0 ? circle : (round + i) % circle;
                    int other = Math.floorMod(round - i, circle);
                    ties.add(Problems.tie(
                            "P" + pool, round + 1, "C" + (pool * size + one) + "-C" + (pool * size + other), 4));
                }
            }
        }
        return Problems.together(Problems.sideBySide(16, LANES, ties));
    }

    private static void day(String what, PlanProblem problem, long seed) {
        System.out.println("  " + what);
        Plan[] plans = new Plan[RUNS + 1];
        Timings first = Timings.of(
                        2 * RUNS, RUNS, run -> Starts.plain(new Board(problem)).orElseThrow())
                .print("  a first plan");
        Timings ours = Timings.of(1, RUNS, run -> plans[run] = Problems.plan(problem, Budget.usual(problem, seed)))
                .print("  plan with the usual budget");
        Plan plan = plans[RUNS];
        double gap = 100.0
                * (plan.score().of(Part.LENGTH) - plan.bound().minutes())
                / plan.bound().minutes();
        System.out.printf(
                Locale.ROOT,
                "    %d slots, lower bound %d, gap %.1f %%, breaches %d, %s%n",
                plan.slots(),
                plan.bound().slots(),
                gap,
                plan.score().breaches(),
                plan.score().parts());
        String[] found = new String[1];
        Timings theirs = Timings.of(0, 1, run -> found[0] = choco(problem)).print("  Choco, end only");
        System.out.println("    Choco: " + found[0]);
        first.printRatio("  our first plan / Choco's end", theirs);
        ours.printRatio("  our whole plan / Choco's end", theirs);
    }

    /** The same day as slots of a constraint model; only its end is asked for, not the comfort of the clubs. */
    private static String choco(PlanProblem problem) {
        Board board = new Board(problem);
        int bound = Bounds.of(board).slots();
        int most = bound + 8;
        Model model = new Model("order of play");
        IntVar[] slots = model.intVarArray("slot", board.pieces().size(), 0, most - 1);
        int lanes = board.courts() / board.pieces().get(0).width();
        IntVar[] counts = model.intVarArray("used", most, 0, lanes);
        int[] numbers = IntStream.range(0, most).toArray();
        model.globalCardinality(slots, numbers, counts, true).post();
        int rest = Clock.roundedUp(problem.restMinutes(), problem.slotMinutes());
        for (Link link : board.links()) {
            IntVar a = slots[link.a()];
            IntVar b = slots[link.b()];
            switch (link.kind()) {
                case CLUB, SOURCE -> model.arithm(b, ">=", a, "+", 1 + rest).post();
                case ROUND, RUBBERS -> model.arithm(b, ">=", a).post();
                case TOGETHER -> model.arithm(b, "=", a).post();
                case PLAYERS -> model.arithm(b, "!=", a).post();
            }
        }
        IntVar last = model.intVar("last", bound - 1, most - 1);
        model.max(last, slots).post();
        model.setObjective(Model.MINIMIZE, last);
        Solver solver = model.getSolver();
        solver.setSearch(Search.minDomLBSearch(slots)); // its default finds no plan for most of these days
        solver.limitTime(LIMIT);
        int best = -1;
        while (solver.solve()) {
            best = last.getValue() + 1;
        }
        String proven = solver.isStopCriterionMet() ? "not proven in " + LIMIT : "proven";
        return best < 0 ? "no plan in " + LIMIT : best + " slots, " + proven + ", " + solver.getNodeCount() + " nodes";
    }
}
