package tiewright.scoring;

/** Gaussian elimination with row pivoting, for the dozen unknowns of {@link Lattice}. */
final class LinearSystem {
    private LinearSystem() {}

    /**
     * Solves n equations in n unknowns, none of them dependent.
     *
     * @param rows n rows of n coefficients and the right-hand side; used up
     */
    static double[] solve(double[][] rows) {
        int n = rows.length;
        for (int column = 0; column < n; column++) {
            pivot(rows, column);
            for (int row = column + 1; row < n; row++) {
                double factor = rows[row][column] / rows[column][column];
                for (int k = column; factor != 0 && k <= n; k++) {
                    rows[row][k] -= factor * rows[column][k];
                }
            }
        }
        double[] x = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = rows[row][n];
            for (int k = row + 1; k < n; k++) {
                sum -= rows[row][k] * x[k];
            }
            x[row] = sum / rows[row][row];
        }
        return x;
    }

    private static void pivot(double[][] rows, int column) {
        int best = column;
        for (int row = column + 1; row < rows.length; row++) {
            best = Math.abs(rows[row][column]) > Math.abs(rows[best][column]) ? row : best;
        }
        double[] swap = rows[column];
        rows[column] = rows[best];
        rows[best] = swap;
    }
}
