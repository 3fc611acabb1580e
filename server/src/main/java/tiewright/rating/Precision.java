package tiewright.rating;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A symmetric positive definite matrix, the inverse of a covariance, factored into L Lᵀ.
 *
 * <p>Most pairs have met few others, so most rows have few entries: unknowns with the fewest entries are eliminated one by
 * one (minimum degree; the usual order of sparse solvers), and what is left and crowded is factored by the library at once.
 */
final class Precision {
    private static final int CROWDED = 48; // neighbours; from here on the dense part is quicker

    private final List<Pivot> pivots;
    private final int[] rest;
    private final double[][] lower;
    private final int size;

    /** An eliminated unknown: its root and its column of L among those eliminated later. */
    private record Pivot(int at, double root, int[] below, double[] column) {}

    private Precision(List<Pivot> pivots, int[] rest, double[][] lower, int size) {
        this.pivots = pivots;
        this.rest = rest;
        this.lower = lower;
        this.size = size;
    }

    int size() {
        return size;
    }

    double logDeterminant() {
        double sum = 0;
        for (Pivot pivot : pivots) {
            sum += 2 * Math.log(pivot.root);
        }
        for (int i = 0; i < rest.length; i++) {
            sum += 2 * Math.log(lower[i][i]);
        }
        return sum;
    }

    /** The matrix to begin with: a diagonal, to which products are added. */
    static final class Builder {
        private final double[] diagonal;
        private final List<Map<Integer, Double>> rows = new ArrayList<>();

        Builder(double[] diagonal) {
            this.diagonal = diagonal.clone();
            for (int i = 0; i < diagonal.length; i++) {
                rows.add(new HashMap<>());
            }
        }

        /** This matrix with more on its diagonal; this one stays as it is. */
        Builder plus(double[] more) {
            Builder sum = new Builder(diagonal);
            for (int i = 0; i < more.length; i++) {
                sum.diagonal[i] += more[i];
                sum.rows.set(i, new HashMap<>(rows.get(i)));
            }
            return sum;
        }

        /** Adds {@code times} the product of the weights with themselves. */
        void add(int[] at, double[] weights, double times) {
            for (int i = 0; i < at.length; i++) {
                diagonal[at[i]] += times * weights[i] * weights[i];
                for (int j = 0; j < i; j++) {
                    add(at[i], at[j], times * weights[i] * weights[j]);
                }
            }
        }

        private void add(int one, int other, double value) {
            rows.get(one).merge(other, value, Double::sum);
            rows.get(other).merge(one, value, Double::sum);
        }

        Precision factored() {
            List<Pivot> pivots = new ArrayList<>();
            boolean[] done = new boolean[diagonal.length];
            PriorityQueue<int[]> fewest = new PriorityQueue<>(
                    Comparator.<int[]>comparingInt(each -> each[1]).thenComparingInt(each -> each[0]));
            for (int i = 0; i < diagonal.length; i++) {
                fewest.add(new int[] {i, rows.get(i).size()});
            }
            while (!fewest.isEmpty() && fewest.peek()[1] < CROWDED) {
                int[] next = fewest.remove();
                if (!done[next[0]] && rows.get(next[0]).size() == next[1]) {
                    done[next[0]] = true;
                    pivots.add(eliminate(next[0], fewest));
                }
            }
            return dense(pivots, done);
        }

        private Pivot eliminate(int at, PriorityQueue<int[]> fewest) {
            double root = Math.sqrt(diagonal[at]);
            int[] below = rows.get(at).keySet().stream()
                    .mapToInt(Integer::intValue)
                    .sorted()
                    .toArray();
            double[] column = new double[below.length];
            for (int i = 0; i < below.length; i++) {
                column[i] = Objects.requireNonNull(rows.get(at).get(below[i])) / root;
            }
            for (int i = 0; i < below.length; i++) {
                rows.get(below[i]).remove(at);
                diagonal[below[i]] -= column[i] * column[i];
                for (int j = 0; j < i; j++) {
                    add(below[i], below[j], -column[i] * column[j]);
                }
            }
            for (int each : below) {
                fewest.add(new int[] {each, rows.get(each).size()});
            }
            return new Pivot(at, root, below, column);
        }

        private Precision dense(List<Pivot> pivots, boolean[] done) {
            int[] rest = java.util.stream.IntStream.range(0, done.length)
                    .filter(i -> !done[i])
                    .toArray();
            if (rest.length == 0) {
                return new Precision(pivots, rest, new double[0][], done.length);
            }
            Map<Integer, Integer> place = new HashMap<>();
            for (int i = 0; i < rest.length; i++) {
                place.put(rest[i], i);
            }
            RealMatrix matrix = MatrixUtils.createRealMatrix(rest.length, rest.length);
            for (int i = 0; i < rest.length; i++) {
                int row = i;
                matrix.setEntry(i, i, diagonal[rest[i]]);
                rows.get(rest[i])
                        .forEach((other, value) ->
                                matrix.setEntry(row, Objects.requireNonNull(place.get(other)), value));
            }
            double[][] lower = new CholeskyDecomposition(matrix, 1e-6, 0).getL().getData();
            return new Precision(pivots, rest, lower, done.length);
        }
    }

    /** The vector y with L y = weights: its square sum is the variance of that weighted sum. */
    double[] half(double[] weights) {
        double[] y = weights.clone();
        for (Pivot pivot : pivots) {
            if (y[pivot.at] != 0) {
                y[pivot.at] /= pivot.root;
                for (int i = 0; i < pivot.below.length; i++) {
                    y[pivot.below[i]] -= pivot.column[i] * y[pivot.at];
                }
            }
        }
        double[] solved = new double[rest.length];
        for (int i = 0; i < rest.length; i++) {
            double sum = y[rest[i]];
            double[] row = lower[i];
            for (int j = 0; j < i; j++) {
                sum -= row[j] * solved[j];
            }
            solved[i] = sum / row[i];
            y[rest[i]] = solved[i];
        }
        return y;
    }

    /** The vector x with L Lᵀ x = right. */
    double[] solve(double[] right) {
        double[] x = half(right);
        for (int i = rest.length - 1; i >= 0; i--) {
            x[rest[i]] /= lower[i][i];
            for (int j = 0; j < i; j++) {
                x[rest[j]] -= lower[i][j] * x[rest[i]];
            }
        }
        for (int p = pivots.size() - 1; p >= 0; p--) {
            Pivot pivot = pivots.get(p);
            double sum = x[pivot.at];
            for (int i = 0; i < pivot.below.length; i++) {
                sum -= pivot.column[i] * x[pivot.below[i]];
            }
            x[pivot.at] = sum / pivot.root;
        }
        return x;
    }
}
