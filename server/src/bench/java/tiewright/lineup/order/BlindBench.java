package tiewright.lineup.order;

import java.util.Locale;
import java.util.Random;
import tiewright.bench.Timings;
import tiewright.conditions.OrderOfStrength;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.lineup.game.MatrixGame;

/** The blind game of two clubs of eight as the captain asks it, beside the whole matrix. */
public final class BlindBench {
    private BlindBench() {}

    public static void run(long seed) {
        blind("interchangeable rubbers", OrderOfStrength.NONE, seed);
        blind("order of strength", OrderOfStrength.RANK_SUM, seed);
    }

    private static void blind(String what, OrderOfStrength order, long seed) {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(4, order),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Ties.random(new Random(seed), 8),
                LineupProblem.Against.UNKNOWN,
                1);
        BlindGame game = BlindGame.of(problem).orElseThrow();
        Timings own = Timings.of(5, 20, run -> BlindGame.of(problem)).print("blind game, " + what);
        SheetGame laid = SheetGame.of(problem).orElseThrow();
        Timings whole =
                Timings.of(2, 5, run -> MatrixGame.solve(matrix(laid))).print("  the whole matrix and its programme");
        System.out.printf(
                Locale.ROOT,
                "    value %.7f and %.7f, gap %.1e, %d by %d sheets%n",
                game.value(),
                MatrixGame.solve(matrix(laid)).value(),
                game.gap(),
                game.ourSheets(),
                game.theirSheets());
        own.printRatio("  without / with the whole matrix", whole);
    }

    private static double[][] matrix(SheetGame laid) {
        double[][] matrix = new double[laid.rows()][laid.columns()];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < matrix[row].length; column++) {
                matrix[row][column] = laid.at(row, column);
            }
        }
        return matrix;
    }
}
