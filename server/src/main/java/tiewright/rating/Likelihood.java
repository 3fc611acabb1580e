package tiewright.rating;

/** What one observation says of a sum of unknowns: the log of its chance, as a function of the sum. */
interface Likelihood {
    double log(double sum);

    /** First derivative of {@link #log}. */
    double slope(double sum);

    /** Minus the second derivative of {@link #log}: how much the observation tells there. */
    double bend(double sum);

    /** Counts as so much of an observation: 1 = whole, less = older. */
    default Likelihood weighing(double weight) {
        Likelihood whole = this;
        return weight == 1
                ? this
                : new Likelihood() {
                    @Override
                    public double log(double sum) {
                        return weight * whole.log(sum);
                    }

                    @Override
                    public double slope(double sum) {
                        return weight * whole.slope(sum);
                    }

                    @Override
                    public double bend(double sum) {
                        return weight * whole.bend(sum);
                    }
                };
    }
}
