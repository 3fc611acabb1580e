package tiewright.rating;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The strengths of some pairs together: what they share of their doubt, and what all of them could well be at once. Two threads
 * that ask at once may both work out the same draws.
 */
public final class Joint {
    private final Map<Rated, Integer> places = new HashMap<>();
    private final double[] means;
    private final double[][] covariance;
    private final long seed;
    private volatile double @Nullable [][] drawn;

    Joint(List<Rated> pairs, double[] means, double[][] covariance, long seed) {
        pairs.forEach(pair -> places.put(pair, places.size()));
        this.means = means;
        this.covariance = covariance;
        this.seed = seed;
    }

    private int place(Rated pair) {
        return Objects.requireNonNull(places.get(pair), () -> pair + " is not among these");
    }

    public boolean knows(Rated pair) {
        return places.containsKey(pair);
    }

    /** How much stronger the first is; the two may share a player. */
    public Estimate edge(Rated ours, Rated theirs) {
        int one = place(ours);
        int other = place(theirs);
        double variance = covariance[one][one] + covariance[other][other] - 2 * covariance[one][other];
        return Estimate.of(means[one] - means[other], Math.sqrt(Math.max(0, variance)));
    }

    /**
     * How strong the pair could well be, draw by draw: the same draw of the same seed is the same world for every pair. Draws
     * come two by two, mirrored about the mean, so that an even question stays even.
     *
     * @return {@link Draws#COUNT} ratings
     */
    public double[] draws(Rated pair) {
        double[][] known = drawn;
        if (known == null) {
            known = Draws.of(means, covariance, seed);
            drawn = known;
        }
        return known[place(pair)];
    }
}
