package tiewright.rating;

/**
 * A strength in rallies won per 100 above an even game: best guess and standard deviation.
 *
 * @param sd 0 when there is no doubt
 */
public record Estimate(double mean, double sd) {
    private static final double NORMAL_95 = 1.959963984540054;

    public Estimate {
        if (!Double.isFinite(mean) || !Double.isFinite(sd) || sd < 0) {
            throw new IllegalArgumentException("not an estimate: " + mean + ", sd " + sd);
        }
    }

    public static Estimate of(double mean, double sd) {
        return new Estimate(mean, sd);
    }

    /** Lower end of the 95 % interval. */
    public double low() {
        return mean - NORMAL_95 * sd;
    }

    /** Upper end of the 95 % interval. */
    public double high() {
        return mean + NORMAL_95 * sd;
    }

    double variance() {
        return sd * sd;
    }
}
