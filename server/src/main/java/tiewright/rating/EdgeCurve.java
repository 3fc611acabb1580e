package tiewright.rating;

import tiewright.scoring.Format;

/**
 * The chance to win a rubber for any edge, read off a table between whose points a cubic runs: to 1e-6, for places where
 * thousands of chances are needed, and for the mean over what an edge may be.
 */
public final class EdgeCurve {
    private static final double STEP = 0.5;
    private static final int POINTS = 140; // edges to 70 rallies in 100, beyond which the chance no longer moves

    /** Standard deviations between two points at which a mean is taken: far below where the sum still moves. */
    private static final double FINE = 0.125;

    private static final double FARTHEST = 8;

    private final double[] ahead = new double[POINTS + 2];

    /** By the plain rates of serving, games of one rubber sharing nothing but the strengths. */
    public EdgeCurve(Format format, int bestOf) {
        this(ServeRates.PLAIN, format, bestOf);
    }

    EdgeCurve(ServeRates rates, Format format, int bestOf) {
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] = RallyModel.rubberChance(rates, format, bestOf, i * STEP);
        }
    }

    private EdgeCurve(EdgeCurve games, double shared) {
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] = games.mean(Estimate.of(i * STEP, shared));
        }
    }

    /** The same where the games of the rubber share something beside the strengths, of this standard deviation. */
    EdgeCurve sharing(double shared) {
        return shared == 0 ? this : new EdgeCurve(this, shared);
    }

    public double chance(double edge) {
        if (edge < 0) {
            return 1 - chance(-edge);
        }
        double place = Math.min(edge / STEP, POINTS - 1);
        int at = (int) place;
        double t = place - at;
        double before = at == 0 ? 1 - ahead[1] : ahead[at - 1];
        double p0 = ahead[at];
        double p1 = ahead[at + 1];
        double p2 = ahead[at + 2];
        double cubic = // Lagrange through four neighbouring points
                -t * (t - 1) * (t - 2) / 6 * before
                        + (t + 1) * (t - 1) * (t - 2) / 2 * p0
                        - (t + 1) * t * (t - 2) / 2 * p1
                        + (t + 1) * t * (t - 1) / 6 * p2;
        return Math.min(1, Math.max(0, cubic));
    }

    /**
     * The mean chance over a normal edge, by the trapezoidal rule, whose error for such integrals shrinks exponentially with
     * the step (L. Trefethen and J. Weideman, SIAM Review 56, 2014, from memory).
     */
    public double mean(Estimate edge) {
        double sum = chance(edge.mean());
        double weights = 1;
        for (double z = FINE; edge.sd() > 0 && z < FARTHEST; z += FINE) {
            double weight = Math.exp(-z * z / 2);
            sum += weight * (chance(edge.mean() - z * edge.sd()) + chance(edge.mean() + z * edge.sd()));
            weights += 2 * weight;
        }
        return sum / weights;
    }
}
