package tiewright.rating;

/** How far one form lies from the one it follows from: normal about 0. */
record Step(double variance) implements Likelihood {
    @Override
    public double log(double sum) {
        return -sum * sum / (2 * variance);
    }

    @Override
    public double slope(double sum) {
        return -sum / variance;
    }

    @Override
    public double bend(double sum) {
        return 1 / variance;
    }
}
