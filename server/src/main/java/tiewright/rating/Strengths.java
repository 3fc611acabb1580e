package tiewright.rating;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

/**
 * Form of players and extra of pairs with their doubt, in rallies won per 100 above an even game. Immutable.
 *
 * <p>A pair is as strong as the mean form of its two players and its extra. Nobody is unknown: a player without any
 * rating or game is an even player with wide doubt.
 */
public final class Strengths {
    private final Unknowns unknowns;
    private final double[] mean;
    private final Precision precision;

    Strengths(Unknowns unknowns, Laplace.Posterior posterior) {
        this.unknowns = unknowns;
        this.mean = posterior.mode();
        this.precision = posterior.precision();
    }

    public Estimate form(PlayerId player) {
        return new Sum().add(player, 1).estimate();
    }

    public Estimate extra(Pair pair) {
        return new Sum().addExtra(pair, 1).estimate();
    }

    /** Mean form and extra. */
    public Estimate rating(Pair pair) {
        return new Sum().add(pair, 1).estimate();
    }

    /** How much stronger the first pair is; the two may share a player. */
    public Estimate edge(Pair ours, Pair theirs) {
        return new Sum().add(ours, 1).add(theirs, -1).estimate();
    }

    /** What serving is worth beyond the usual rate, in rallies won per 100; empty where no such game was filmed. */
    public Optional<Estimate> serving(Format.Kind kind) {
        OptionalInt index = unknowns.of(kind);
        return index.isEmpty()
                ? Optional.empty()
                : Optional.of(new Sum().add(index.getAsInt(), 1).estimate());
    }

    /** Chance that the first pair is at least as strong as the second; a half where they are equal beyond doubt. */
    public double chanceAsStrong(Pair one, Pair other) {
        Estimate ahead = edge(one, other);
        if (ahead.sd() == 0) {
            return ahead.mean() > 0 ? 1 : ahead.mean() < 0 ? 0 : 0.5;
        }
        return new NormalDistribution().cumulativeProbability(ahead.mean() / ahead.sd());
    }

    /**
     * Ratings of these pairs as they could well be: draws from the joint posterior, the same ones for the same seed.
     *
     * @return one row for each draw, a column for each pair
     */
    public double[][] draws(List<Pair> pairs, int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Sum> sums = pairs.stream().map(pair -> new Sum().add(pair, 1)).toList();
        double[] means = sums.stream().mapToDouble(Sum::mean).toArray();
        double[][] halves = sums.stream().map(Sum::half).toArray(double[][]::new);
        double[][] rows = new double[count][];
        for (int i = 0; i < count; i++) {
            rows[i] = draw(sums, means, halves, random);
        }
        return rows;
    }

    private double[] draw(List<Sum> sums, double[] means, double[][] halves, SplittableRandom random) {
        double[] normal = new double[mean.length];
        for (int i = 0; i < normal.length; i++) {
            normal[i] = random.nextGaussian();
        }
        Map<Object, Double> others = new HashMap<>();
        double[] ratings = means.clone();
        for (int i = 0; i < ratings.length; i++) {
            for (int j = 0; j < normal.length; j++) {
                ratings[i] += halves[i][j] * normal[j];
            }
            ratings[i] += sums.get(i).others(others, random);
        }
        return ratings;
    }

    /** A weighted sum of forms and extras, with its variance. */
    private final class Sum {
        private final double[] weights = new double[mean.length];
        private final Map<Object, Double> otherWeights =
                new java.util.LinkedHashMap<>(); // of players and pairs that no game is about
        private final Map<Object, Estimate> others = new HashMap<>();

        Sum add(Pair pair, double weight) {
            return add(pair.first(), weight / 2).add(pair.second(), weight / 2).addExtra(pair, weight);
        }

        Sum add(PlayerId player, double weight) {
            return add(player, unknowns.of(player), unknowns.prior().form(player), weight);
        }

        Sum addExtra(Pair pair, double weight) {
            return add(pair, unknowns.of(pair), unknowns.prior().extra(pair), weight);
        }

        Sum add(int index, double weight) {
            weights[index] += weight;
            return this;
        }

        private Sum add(Object whose, OptionalInt index, Estimate otherwise, double weight) {
            if (index.isPresent()) {
                return add(index.getAsInt(), weight);
            }
            others.put(whose, otherwise);
            otherWeights.merge(whose, weight, Double::sum);
            return this;
        }

        double mean() {
            double sum = 0;
            for (Map.Entry<Object, Double> other : otherWeights.entrySet()) {
                sum += other.getValue()
                        * Objects.requireNonNull(others.get(other.getKey())).mean();
            }
            for (int i = 0; i < weights.length; i++) {
                sum += weights[i] * mean[i];
            }
            return sum;
        }

        double[] half() {
            return precision.half(weights);
        }

        /** How far off those are whom no game is about, the same number for the same one. */
        double others(Map<Object, Double> drawn, SplittableRandom random) {
            double sum = 0;
            for (Map.Entry<Object, Double> other : otherWeights.entrySet()) {
                double sd = Objects.requireNonNull(others.get(other.getKey())).sd();
                sum += other.getValue() * drawn.computeIfAbsent(other.getKey(), any -> sd * random.nextGaussian());
            }
            return sum;
        }

        Estimate estimate() {
            double variance = 0;
            for (Map.Entry<Object, Double> other : otherWeights.entrySet()) {
                variance += other.getValue()
                        * other.getValue()
                        * Objects.requireNonNull(others.get(other.getKey())).variance();
            }
            for (double each : half()) {
                variance += each * each;
            }
            return Estimate.of(mean(), Math.sqrt(variance));
        }
    }
}
