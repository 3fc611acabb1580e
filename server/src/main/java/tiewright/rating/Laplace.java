package tiewright.rating;

import java.util.List;

/**
 * The most likely unknowns, given a normal prior for each and what was observed, and a normal distribution around them with
 * the curvature found there.
 *
 * <p>Newton's method; a factored curvature serves several steps as long as they shrink quickly, and is made anew at the end.
 */
final class Laplace {
    private static final int MOST_ROUNDS = 200;
    private static final double CLOSE_ENOUGH = 1e-9;
    private static final double SHRINKS_QUICKLY = 0.25;

    private final double[] prior;
    private final double[] precision;
    private final List<Observation> observations;

    private Laplace(double[] prior, double[] precision, List<Observation> observations) {
        this.prior = prior;
        this.precision = precision;
        this.observations = observations;
    }

    /** @param precision inverse of the variance, above 0 for every unknown */
    record Posterior(double[] mode, Precision precision) {}

    static Posterior fit(double[] mean, double[] precision, List<Observation> observations) {
        return new Laplace(mean, precision, observations).fit();
    }

    private Posterior fit() {
        double[] at = prior.clone();
        Precision curvature = curvature(at);
        double before = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS && !observations.isEmpty(); round++) {
            double[] next = shortened(at, curvature.solve(slope(at)));
            double moved = distance(at, next);
            at = next;
            if (moved < CLOSE_ENOUGH) {
                break;
            }
            if (moved > SHRINKS_QUICKLY * before) {
                curvature = curvature(at);
            }
            before = moved;
        }
        return new Posterior(at, curvature(at));
    }

    private double[] slope(double[] at) {
        double[] slope = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            slope[i] = precision[i] * (prior[i] - at[i]);
        }
        observations.forEach(each -> each.addSlope(at, slope));
        return slope;
    }

    /** Minus the second derivatives of the log posterior. */
    private Precision curvature(double[] at) {
        Precision.Builder matrix = new Precision.Builder(precision);
        observations.forEach(each -> matrix.add(each.at(), each.weights(), each.bend(at)));
        return matrix.factored();
    }

    /** Halves the step until the posterior rises, so that a wild score cannot throw the search. */
    private double[] shortened(double[] at, double[] step) {
        double before = logPosterior(at);
        for (double share = 1; share > 1e-6; share /= 2) {
            double[] next = at.clone();
            for (int i = 0; i < at.length; i++) {
                next[i] += share * step[i];
            }
            if (logPosterior(next) >= before) {
                return next;
            }
        }
        return at;
    }

    /** Up to a constant: the prior without its normalising factor. */
    private double logPosterior(double[] at) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum -= precision[i] * (at[i] - prior[i]) * (at[i] - prior[i]) / 2;
        }
        for (Observation each : observations) {
            sum += each.log(at);
        }
        return sum;
    }

    private static double distance(double[] one, double[] other) {
        double most = 0;
        for (int i = 0; i < one.length; i++) {
            most = Math.max(most, Math.abs(one[i] - other[i]));
        }
        return most;
    }
}
