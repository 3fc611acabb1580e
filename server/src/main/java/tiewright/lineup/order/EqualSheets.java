package tiewright.lineup.order;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import tiewright.lineup.game.OracleGame;

/**
 * Sheets that are worth the same whatever the others name share their weight evenly: a solver needs only one of them, and names
 * the same one to everybody who asks; a draw that anybody can work out hides nothing.
 */
final class EqualSheets {
    /** Rounding; payoffs are chances. */
    private static final double SAME = 1e-11;

    /** What a shared draw may lose by rounding. */
    private static final double NO_LOSS = 1e-9;

    /** Sheets that share with one, at most, spread over all that could. */
    private static final int MOST = 24;

    /** Payoffs looked at to find them, at most: where each is the mean over all orders, pairs are shared by their order already. */
    private static final long MOST_PAYOFFS = 150_000;

    private final OracleGame.Payoff game;
    private final OracleGame solved;
    private final int[] answers;

    private EqualSheets(OracleGame.Payoff game, OracleGame solved) {
        this.game = game;
        this.solved = solved;
        this.answers = IntStream.range(0, game.columns())
                .filter(column -> solved.columnMix()[column] > 0)
                .toArray();
    }

    /** The weights of the rows, shared as far as the guarantee stays what it was. */
    static double[] share(OracleGame.Payoff game, OracleGame solved) {
        EqualSheets equal = new EqualSheets(game, solved);
        if ((long) game.rows() * equal.answers.length > MOST_PAYOFFS) {
            return solved.rowMix();
        }
        double[] shared = equal.shared();
        return equal.guarantee(shared) >= solved.guarantee() - NO_LOSS ? shared : solved.rowMix();
    }

    private double[] shared() {
        double[] weights = new double[game.rows()];
        for (int row = 0; row < weights.length; row++) {
            if (solved.rowMix()[row] > 0) {
                List<Integer> with = equalTo(row);
                for (int other : with) {
                    weights[other] += solved.rowMix()[row] / with.size();
                }
            }
        }
        return weights;
    }

    private List<Integer> equalTo(int row) {
        List<Integer> all = IntStream.range(0, game.rows())
                .filter(other -> Arrays.stream(answers)
                        .allMatch(column -> Math.abs(game.at(row, column) - game.at(other, column)) < SAME))
                .boxed()
                .toList();
        int step = (all.size() + MOST - 1) / MOST;
        return IntStream.range(0, all.size())
                .filter(i -> i % step == 0)
                .mapToObj(all::get)
                .toList();
    }

    private double guarantee(double[] weights) {
        int[] rows = IntStream.range(0, weights.length)
                .filter(row -> weights[row] > 0)
                .toArray();
        return IntStream.range(0, game.columns())
                .mapToDouble(column -> Arrays.stream(rows)
                        .mapToDouble(row -> weights[row] * game.at(row, column))
                        .sum())
                .min()
                .orElseThrow();
    }
}
