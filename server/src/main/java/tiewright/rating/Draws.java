package tiewright.rating;

import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RectangularCholeskyDecomposition;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Draws from a normal distribution that are spread more evenly than by lot: points of Sobol's sequence, moved by the seed
 * (randomised quasi-Monte Carlo; A. Owen, from memory), each with its mirror image about the mean, then turned so that their
 * variances and covariances are exactly those asked. What varies most is drawn from the first, most even coordinates.
 */
public final class Draws {
    /** Draws of everything; two by two, the second mirrors the first. */
    public static final int COUNT = 2048;

    private static final int EVEN_COORDINATES = 100; // beyond, by lot
    private static final double NOTHING = 1e-10; // of the largest variance

    private Draws() {}

    /** @return a row for each unknown, a column for each draw */
    static double[][] of(double[] means, double[][] covariance, long seed) {
        double[][] drawn = new double[means.length][COUNT];
        double[][] root = root(covariance);
        double[][] normals = normals(root.length == 0 ? 0 : root[0].length, seed);
        for (int i = 0; i < means.length; i++) {
            double[] row = drawn[i];
            for (int k = 0; k < normals.length; k++) {
                double weight = root[i][k];
                for (int point = 0; weight != 0 && point < COUNT / 2; point++) {
                    row[2 * point] += weight * normals[k][point];
                }
            }
            for (int point = 0; point < COUNT / 2; point++) {
                row[2 * point + 1] = means[i] - row[2 * point];
                row[2 * point] += means[i];
            }
        }
        return drawn;
    }

    /** A matrix whose product with itself turned is the covariance, the largest variances first; no columns where there is no doubt. */
    private static double[][] root(double[][] covariance) {
        double most = 0;
        for (int i = 0; i < covariance.length; i++) {
            most = Math.max(most, covariance[i][i]);
        }
        if (!(most > 0)) {
            return new double[covariance.length][0];
        }
        RealMatrix matrix = MatrixUtils.createRealMatrix(covariance);
        return new RectangularCholeskyDecomposition(matrix, NOTHING * most)
                .getRootMatrix()
                .getData();
    }

    /** @return a row for each coordinate */
    private static double[][] normals(int coordinates, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        NormalDistribution normal = new NormalDistribution();
        double[][] normals = new double[coordinates][COUNT / 2];
        int even = Math.min(coordinates, EVEN_COORDINATES);
        double[] moved = random.doubles(even).toArray();
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(Math.max(1, even));
        for (int point = 0; point < COUNT / 2; point++) {
            double[] next = sobol.nextVector();
            for (int k = 0; k < coordinates; k++) {
                double place = k < even ? (next[k] + moved[k]) % 1 : random.nextDouble();
                normals[k][point] = normal.inverseCumulativeProbability(Math.max(1e-9, Math.min(1 - 1e-9, place)));
            }
        }
        even(normals, even);
        return normals;
    }

    /** Turns and stretches the coordinates so that they have variance 1 and nothing in common in these very points. */
    private static void even(double[][] normals, int coordinates) {
        for (int k = 0; k < coordinates; k++) {
            double[] row = normals[k];
            for (int j = 0; j < k; j++) {
                add(row, normals[j], -product(row, normals[j]) / row.length);
            }
            double size = Math.sqrt(product(row, row) / row.length);
            for (int point = 0; point < row.length; point++) {
                row[point] /= size;
            }
        }
    }

    private static void add(double[] sum, double[] what, double times) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += times * what[i];
        }
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
