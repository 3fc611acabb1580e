package tiewright.lineup;

import java.util.Arrays;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tiewright.rating.Draws;

/**
 * A chance of ours and its doubt: the mean, and what it is in each draw of the strengths. The same draw is the same world for
 * every chance of a tie. Not for two threads at once.
 */
public final class DrawnChance {
    private final double mean;
    private final Supplier<double[]> source;
    private double @Nullable [] draws;
    private double @Nullable [] averages; // by part

    public DrawnChance(double mean, Supplier<double[]> source) {
        this.mean = mean;
        this.source = source;
    }

    /** Without doubt. */
    public static DrawnChance surely(double chance) {
        return new DrawnChance(chance, () -> {
            double[] same = new double[Draws.COUNT];
            Arrays.fill(same, chance);
            return same;
        });
    }

    /** Exact, where the draws only come near it. */
    public double mean() {
        return mean;
    }

    /** {@link Draws#COUNT} of them. */
    public double[] draws() {
        if (draws == null) {
            draws = source.get();
        }
        return draws;
    }

    /** The mean of some of the draws. */
    public double average(SomeDraws of) {
        if (averages == null) {
            averages = new double[SomeDraws.PARTS];
            Arrays.fill(averages, Double.NaN);
        }
        if (Double.isNaN(averages[of.part()])) {
            averages[of.part()] = work(of);
        }
        return averages[of.part()];
    }

    private double work(SomeDraws of) {
        double sum = 0;
        for (int i = of.from(); i < of.from() + of.count(); i++) {
            sum += draws()[i];
        }
        return sum / of.count();
    }
}
