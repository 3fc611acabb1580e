package tiewright.rating;

/**
 * So many rallies won of so many served: logit of the chance = {@code base} + {@code scale} times the sum.
 *
 * @param won 0 to {@code served}
 */
record RallyCount(double won, double served, double base, double scale) implements Likelihood {
    @Override
    public double log(double sum) {
        double logit = base + scale * sum;
        // log(1 + e^x) without overflow on either side
        double softplus = Math.max(logit, 0) + Math.log1p(Math.exp(-Math.abs(logit)));
        return won * logit - served * softplus;
    }

    @Override
    public double slope(double sum) {
        return scale * (won - served * chance(sum));
    }

    @Override
    public double bend(double sum) {
        double chance = chance(sum);
        return scale * scale * served * chance * (1 - chance);
    }

    private double chance(double sum) {
        return 1 / (1 + Math.exp(-base - scale * sum));
    }
}
