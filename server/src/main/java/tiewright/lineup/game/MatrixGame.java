package tiewright.lineup.game;

import java.util.Arrays;

/**
 * A zero-sum game of two players who choose at the same time: what is it worth, and how should each mix?
 *
 * <p>Solved by linear programming on the rows and columns that matter, which grow until no row and no column left out is
 * better (double oracle). The answer is never taken on trust: {@link #gap} is what the two mixes leave open when tried
 * against every single row and column of the whole matrix. Immutable.
 */
public final class MatrixGame {
    private final double value;
    private final double[] row;
    private final double[] column;
    private final double gap;

    private MatrixGame(double value, double[] row, double[] column, double gap) {
        this.value = value;
        this.row = row;
        this.column = column;
        this.gap = gap;
    }

    /**
     * Solves the game; the row player gets {@code payoff[row][column]} and wants much, the column player wants it small.
     *
     * @param payoff at least one row and one column, all rows of one length, finite numbers
     * @throws IllegalArgumentException if it is not such a matrix
     */
    public static MatrixGame solve(double[][] payoff) {
        check(payoff);
        double size = 0;
        for (double[] line : payoff) {
            for (double entry : line) {
                size = Math.max(size, Math.abs(entry));
            }
        }
        double unit = size == 0 ? 1 : size; // dividing first keeps differences of huge numbers finite
        double[][] scaled = new double[payoff.length][payoff[0].length];
        for (int i = 0; i < payoff.length; i++) {
            for (int j = 0; j < payoff[i].length; j++) {
                scaled[i][j] = payoff[i][j] / unit;
            }
        }
        Mixes mixes = DoubleOracle.solve(scaled);
        double least = mixes.guarantee(scaled);
        double most = mixes.ceiling(scaled);
        return new MatrixGame(
                (least / 2 + most / 2) * unit, mixes.row(), mixes.column(), Math.max(0, most - least) * unit);
    }

    private static void check(double[][] payoff) {
        if (payoff.length == 0 || payoff[0].length == 0) {
            throw new IllegalArgumentException("a game needs a row and a column");
        }
        for (double[] line : payoff) {
            if (line.length != payoff[0].length || !Arrays.stream(line).allMatch(Double::isFinite)) {
                throw new IllegalArgumentException("a game is a full table of finite numbers");
            }
        }
    }

    /** What the row player can make sure of, and the column player can hold it to, within half the {@link #gap}. */
    public double value() {
        return value;
    }

    /** Weights of the rows, adding up to 1. */
    public double[] row() {
        return row.clone();
    }

    /** Weights of the columns, adding up to 1. */
    public double[] column() {
        return column.clone();
    }

    /** The best single row against the column mix less the worst single column against the row mix. 0 = exact. */
    public double gap() {
        return gap;
    }
}
