package tiewright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import tiewright.lineup.game.MatrixGame;
import tiewright.lineup.tie.TieOdds;
import tiewright.rating.RallyModel;
import tiewright.scoring.Format;

/**
 * Two clubs of eight name four pairs, blind: matrix of tie chances and its solution. Rubbers that count alike are reduced to
 * the 105 pairings of each side, exactly; with an order of strength all 199 legal sheets stand in the matrix; and the 2,520
 * sheets without any reduction show that the reduced game has the same value. Beside them one plain linear programme over
 * the whole matrix, by a general library.
 */
final class OrderGameBench {
    private static final int PLAYERS = 8;
    private static final int RUBBERS = 4;

    /** Our chance, pair against pair; a pair is a set of two bits. */
    private final double[][] chance = new double[1 << PLAYERS][1 << PLAYERS];

    private double level;

    private OrderGameBench(long seed) {
        Random random = new Random(seed);
        double[] ours = strengths(random);
        double[] theirs = strengths(random);
        for (int[] sheet : sheets(false)) {
            for (int[] other : sheets(false)) {
                if (chance[sheet[0]][other[0]] == 0) {
                    double edge = ours[sheet[0]] - theirs[other[0]];
                    chance[sheet[0]][other[0]] = RallyModel.rubberChance(Format.sideOut(11), 1, edge);
                }
            }
        }
        level = chance[strongest(ours)][strongest(theirs)];
    }

    static void run() {
        OrderGameBench tie = new OrderGameBench(1);
        List<int[]> pairings = pairings();
        List<int[]> inOrder = sheets(true);
        List<int[]> all = sheets(false);
        double[][] reduced = tie.overAllOrders(pairings);
        measure(
                "interchangeable rubbers, " + pairings.size() + " pairings a side",
                20,
                40,
                () -> tie.overAllOrders(pairings),
                true);
        measure("order of strength, " + inOrder.size() + " sheets a side", 20, 40, () -> tie.matrix(inOrder), true);
        MatrixGame whole =
                measure("all " + all.size() + " sheets a side, no reduction", 1, 3, () -> tie.matrix(all), false);
        System.out.printf(
                Locale.ROOT,
                "  value without reduction less value with it: %.2e; most heap now %d MiB%n",
                whole.value() - MatrixGame.solve(reduced).value(),
                Runtime.getRuntime().totalMemory() >> 20);
    }

    private static MatrixGame measure(String what, int warmUp, int runs, Supplier<double[][]> matrix, boolean beside) {
        System.out.println("  " + what);
        double[][] payoff = matrix.get();
        MatrixGame game = MatrixGame.solve(payoff);
        Timings.of(warmUp, runs, run -> matrix.get()).print("  matrix of tie chances");
        Timings solved =
                Timings.of(warmUp, runs, run -> MatrixGame.solve(payoff)).print("  solution");
        System.out.printf(Locale.ROOT, "    value %.9f, gap %.2e%n", game.value(), game.gap());
        if (beside) {
            double value = byOneProgramme(payoff);
            Timings plain = Timings.of(warmUp / 2, runs / 2, run -> byOneProgramme(payoff))
                    .print("  one linear programme, one side only");
            System.out.printf(Locale.ROOT, "    its value %.9f%n", value);
            solved.printRatio("  solution / one linear programme", plain);
        }
        return game;
    }

    /** Of every pair: mean form of its players and an extra, in rallies won per 100. */
    private static double[] strengths(Random random) {
        double[] forms = random.doubles(PLAYERS, -6, 6).toArray();
        double[] strengths = new double[1 << PLAYERS];
        for (int pair = 0; pair < strengths.length; pair++) {
            strengths[pair] = 3 * random.nextGaussian();
            for (int player = 0; player < PLAYERS; player++) {
                strengths[pair] += (pair & 1 << player) != 0 ? forms[player] / 2 : 0;
            }
        }
        return strengths;
    }

    private static int strongest(double[] strengths) {
        return sheets(false).stream()
                .map(sheet -> sheet[0])
                .distinct()
                .max((one, other) -> Double.compare(strengths[one], strengths[other]))
                .orElseThrow();
    }

    /** Every ordered sheet; in order: rank sums that do not fall. */
    private static List<int[]> sheets(boolean inOrder) {
        List<int[]> sheets = new ArrayList<>();
        name(new int[RUBBERS], 0, (1 << PLAYERS) - 1, inOrder, sheets);
        return sheets;
    }

    private static void name(int[] sheet, int rubber, int left, boolean inOrder, List<int[]> sheets) {
        if (rubber == RUBBERS) {
            sheets.add(sheet.clone());
            return;
        }
        for (int pair = 3; pair < 1 << PLAYERS; pair++) {
            boolean isFree = Integer.bitCount(pair) == 2 && (pair & left) == pair;
            if (isFree && !(inOrder && rubber > 0 && rankSum(pair) < rankSum(sheet[rubber - 1]))) {
                sheet[rubber] = pair;
                name(sheet, rubber + 1, left & ~pair, inOrder, sheets);
            }
        }
    }

    private static int rankSum(int pair) {
        return Integer.numberOfTrailingZeros(pair) + Integer.numberOfTrailingZeros(Integer.highestOneBit(pair));
    }

    private static List<int[]> pairings() {
        return sheets(false).stream()
                .filter(sheet -> sheet[0] < sheet[1] && sheet[1] < sheet[2] && sheet[2] < sheet[3])
                .toList();
    }

    private double[][] matrix(List<int[]> sheets) {
        double[][] payoff = new double[sheets.size()][sheets.size()];
        for (int i = 0; i < payoff.length; i++) {
            for (int j = 0; j < payoff.length; j++) {
                payoff[i][j] = tieChance(sheets.get(i), sheets.get(j), 0, 1, 2, 3);
            }
        }
        return payoff;
    }

    /** Mean over the orders in which the pairs of one side can meet those of the other. */
    private double[][] overAllOrders(List<int[]> pairings) {
        double[][] payoff = new double[pairings.size()][pairings.size()];
        for (int a = 0; a < RUBBERS; a++) {
            for (int b = 0; b < RUBBERS; b++) {
                for (int c = 0; c < RUBBERS; c++) {
                    if (a != b && a != c && b != c) {
                        add(payoff, pairings, a, b, c, 6 - a - b - c);
                    }
                }
            }
        }
        return payoff;
    }

    private void add(double[][] payoff, List<int[]> pairings, int... order) {
        for (int i = 0; i < payoff.length; i++) {
            for (int j = 0; j < payoff.length; j++) {
                payoff[i][j] += tieChance(pairings.get(i), pairings.get(j), order) / 24;
            }
        }
    }

    private double tieChance(int[] ours, int[] theirs, int... order) {
        double[] rubbers = new double[RUBBERS];
        for (int rubber = 0; rubber < RUBBERS; rubber++) {
            rubbers[rubber] = chance[ours[rubber]][theirs[order[rubber]]];
        }
        return TieOdds.of(rubbers).win(level);
    }

    /** The value, from the column player's linear programme (V. Chvatal, Linear Programming, chapter 15). Chances are all positive. */
    private static double byOneProgramme(double[][] payoff) {
        double[] ones = new double[payoff[0].length];
        Arrays.fill(ones, 1);
        List<LinearConstraint> rows = new ArrayList<>();
        for (double[] row : payoff) {
            rows.add(new LinearConstraint(row, Relationship.LEQ, 1));
        }
        double sum = new SimplexSolver()
                .optimize(
                        new MaxIter(100_000),
                        new LinearObjectiveFunction(ones, 0),
                        new LinearConstraintSet(rows),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
        return 1 / sum;
    }
}
