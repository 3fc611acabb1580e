package tiewright.rating;

import java.util.List;

/**
 * What was seen, as it looks from near the most likely unknowns: a normal curve in them. Then the chance of what was seen, the
 * unknowns averaged out, has a closed form under any normal prior.
 */
final class AboutMode {
    private final Precision.Builder bends;
    private final double[] pull; // what the observations alone pull towards

    AboutMode(List<Observation> observations, double[] mode) {
        this.bends = new Precision.Builder(new double[mode.length]);
        this.pull = new double[mode.length];
        for (Observation each : observations) {
            double bend = each.bend(mode);
            bends.add(each.at(), each.weights(), bend);
            each.addSlope(mode, pull);
            each.add(bend * each.sum(mode), pull);
        }
    }

    /**
     * Log of that chance, up to what no prior changes.
     *
     * @param mean of the prior; {@code precision} the inverse of its variance, 0 where it says nothing
     */
    double logChance(double[] mean, double[] precision) {
        double[] right = pull.clone();
        double sum = 0;
        for (int i = 0; i < mean.length; i++) {
            right[i] += precision[i] * mean[i];
            sum += precision[i] == 0 ? 0 : Math.log(precision[i]) / 2 - precision[i] * mean[i] * mean[i] / 2;
        }
        Precision factored = bends.plus(precision).factored();
        for (double half : factored.half(right)) {
            sum += half * half / 2;
        }
        return sum - factored.logDeterminant() / 2;
    }
}
