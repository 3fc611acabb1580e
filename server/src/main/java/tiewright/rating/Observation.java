package tiewright.rating;

/** What was seen, and the sum of unknowns it depends on: {@code weights[i]} of the unknown {@code at[i]}, each named once. */
record Observation(int[] at, double[] weights, Likelihood says) {
    double sum(double[] unknowns) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += weights[i] * unknowns[at[i]];
        }
        return sum;
    }

    double log(double[] unknowns) {
        return says.log(sum(unknowns));
    }

    void addSlope(double[] unknowns, double[] slope) {
        double rise = says.slope(sum(unknowns));
        for (int i = 0; i < at.length; i++) {
            slope[at[i]] += weights[i] * rise;
        }
    }

    /** Adds so much along the weights. */
    void add(double times, double[] to) {
        for (int i = 0; i < at.length; i++) {
            to[at[i]] += weights[i] * times;
        }
    }

    /** Never less than nothing, so that a score that tells little cannot make the whole less sure. */
    double bend(double[] unknowns) {
        return Math.max(0, says.bend(sum(unknowns)));
    }
}
