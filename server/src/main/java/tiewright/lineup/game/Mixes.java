package tiewright.lineup.game;

/** A mix of rows and a mix of columns, and what each makes sure of over a whole matrix. */
record Mixes(double[] row, double[] column) {
    /** The payoff of each column against the row mix. */
    double[] byColumn(double[][] payoff) {
        double[] sums = new double[payoff[0].length];
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                for (int j = 0; j < sums.length; j++) {
                    sums[j] += row[i] * payoff[i][j];
                }
            }
        }
        return sums;
    }

    /** The payoff of each row against the column mix. */
    double[] byRow(double[][] payoff) {
        double[] sums = new double[payoff.length];
        for (int i = 0; i < sums.length; i++) {
            double sum = 0;
            for (int j = 0; j < column.length; j++) {
                sum += column[j] * payoff[i][j];
            }
            sums[i] = sum;
        }
        return sums;
    }

    double guarantee(double[][] payoff) {
        double least = Double.POSITIVE_INFINITY;
        for (double sum : byColumn(payoff)) {
            least = Math.min(least, sum);
        }
        return least;
    }

    double ceiling(double[][] payoff) {
        double most = Double.NEGATIVE_INFINITY;
        for (double sum : byRow(payoff)) {
            most = Math.max(most, sum);
        }
        return most;
    }
}
