package tiewright.lineup.game;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A zero-sum game whose payoffs are worked out one by one: solved on few rows and columns, to which the best answers among all
 * others are added until both sides' guarantees are as near as wanted. Nothing of the size of the whole matrix is kept.
 *
 * @param guarantee the least that the row mix gets, tried against every column
 * @param gap the most that any row gets against the column mix, less the guarantee
 */
public record OracleGame(double guarantee, double gap, double[] rowMix, double[] columnMix) {
    /** Ten times nearer than what is promised. */
    private static final double NEAR = 1e-5;

    private static final int MOST_ROUNDS = 300;
    private static final int ADDED = 6;
    static final double NO_WEIGHT = 1e-9;

    /** What the row player gets, to 1e-6. */
    public interface Payoff {
        int rows();

        int columns();

        double at(int row, int column);
    }

    public static OracleGame solve(Payoff payoff) {
        AskedPart part = new AskedPart(payoff);
        OracleGame best = new OracleGame(0, Double.POSITIVE_INFINITY, new double[0], new double[0]);
        for (int round = 0; round < MOST_ROUNDS && best.gap() > NEAR; round++) {
            Mixes mixes = ProgrammedGame.solve(part.payoffs());
            double[] byRow = part.byRow(mixes.column());
            double[] byColumn = part.byColumn(mixes.row());
            double least = Arrays.stream(byColumn).min().orElseThrow();
            double most = Arrays.stream(byRow).max().orElseThrow();
            if (most - least < best.gap()) {
                best = new OracleGame(
                        least,
                        Math.max(0, most - least),
                        spread(part.rows(), mixes.row(), payoff.rows()),
                        spread(part.columns(), mixes.column(), payoff.columns()));
            }
            List<Integer> moreRows = better(part.rows(), byRow, 1);
            List<Integer> moreColumns = better(part.columns(), byColumn, -1);
            if (moreRows.isEmpty() && moreColumns.isEmpty()) {
                break;
            }
            part.grow(moreRows, moreColumns);
        }
        return best;
    }

    /** The best answers that are not there yet; none if the best of all are. */
    private static List<Integer> better(List<Integer> places, double[] answers, int sign) {
        List<Integer> best = IntStream.range(0, answers.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -sign * answers[i]))
                .limit(ADDED)
                .toList();
        double known = places.stream().mapToDouble(i -> sign * answers[i]).max().orElseThrow();
        return best.stream()
                .filter(i -> sign * answers[i] > known + 1e-12 && !places.contains(i))
                .toList();
    }

    private static double[] spread(List<Integer> places, double[] weights, int size) {
        double[] all = new double[size];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            all[places.get(i)] = weights[i] > NO_WEIGHT ? weights[i] : 0;
            sum += all[places.get(i)];
        }
        double whole = sum;
        return Arrays.stream(all).map(weight -> weight / whole).toArray();
    }
}
