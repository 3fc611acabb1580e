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
    /** So many of the draws do where a search asks thousands of times. */
    public static final int FEW = 64;

    private final double mean;
    private final Supplier<double[]> source;
    private double @Nullable [] draws;
    private double average = Double.NaN;
    private double averageOfFew = Double.NaN;

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

    /** The mean of the first so many draws. */
    public double average(int of) {
        if (of == FEW) {
            averageOfFew = Double.isNaN(averageOfFew) ? work(of) : averageOfFew;
            return averageOfFew;
        }
        average = Double.isNaN(average) ? work(Draws.COUNT) : average;
        return average;
    }

    private double work(int of) {
        double sum = 0;
        for (int i = 0; i < of; i++) {
            sum += draws()[i];
        }
        return sum / of;
    }
}
