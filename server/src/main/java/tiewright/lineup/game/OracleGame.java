package tiewright.lineup.game;

import java.util.ArrayList;
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
    private static final double NO_WEIGHT = 1e-9;

    /** What the row player gets, to 1e-6. */
    public interface Payoff {
        int rows();

        int columns();

        double at(int row, int column);
    }

    public static OracleGame solve(Payoff payoff) {
        List<Integer> rows = new ArrayList<>(List.of(0));
        List<Integer> columns = new ArrayList<>(List.of(0));
        OracleGame best = new OracleGame(0, Double.POSITIVE_INFINITY, new double[0], new double[0]);
        for (int round = 0; round < MOST_ROUNDS && best.gap() > NEAR; round++) {
            Mixes mixes = ProgrammedGame.solve(part(payoff, rows, columns));
            double[] byRow =
                    answers(payoff.rows(), row -> mean(columns, mixes.column(), column -> payoff.at(row, column)));
            double[] byColumn =
                    answers(payoff.columns(), column -> mean(rows, mixes.row(), row -> payoff.at(row, column)));
            double least = Arrays.stream(byColumn).min().orElseThrow();
            double most = Arrays.stream(byRow).max().orElseThrow();
            if (most - least < best.gap()) {
                best = new OracleGame(
                        least,
                        Math.max(0, most - least),
                        spread(rows, mixes.row(), payoff.rows()),
                        spread(columns, mixes.column(), payoff.columns()));
            }
            boolean moreRows = grow(rows, byRow, 1);
            boolean moreColumns = grow(columns, byColumn, -1);
            if (!moreRows && !moreColumns) {
                break;
            }
        }
        return best;
    }

    private static double[][] part(Payoff payoff, List<Integer> rows, List<Integer> columns) {
        double[][] part = new double[rows.size()][columns.size()];
        for (int i = 0; i < part.length; i++) {
            for (int j = 0; j < part[i].length; j++) {
                part[i][j] = payoff.at(rows.get(i), columns.get(j));
            }
        }
        return part;
    }

    private interface Place {
        double at(int place);
    }

    private static double[] answers(int size, Place worth) {
        double[] answers = new double[size];
        Arrays.setAll(answers, worth::at);
        return answers;
    }

    private static double mean(List<Integer> places, double[] weights, Place worth) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] > NO_WEIGHT ? weights[i] * worth.at(places.get(i)) : 0;
        }
        return sum;
    }

    /** Adds the best answers that are not there yet; false if the best of all are. */
    private static boolean grow(List<Integer> places, double[] answers, int sign) {
        List<Integer> best = IntStream.range(0, answers.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -sign * answers[i]))
                .limit(ADDED)
                .toList();
        double known = places.stream().mapToDouble(i -> sign * answers[i]).max().orElseThrow();
        List<Integer> more = best.stream()
                .filter(i -> sign * answers[i] > known + 1e-12 && !places.contains(i))
                .toList();
        places.addAll(more);
        return !more.isEmpty();
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
