package tiewright.rating;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/** A weighted sum of forms and extras, with its variance. */
final class WeightedSum {
    /** How far the form of a player has moved since the last game. */
    private record Moved(PlayerId player) {}

    private final Unknowns unknowns;
    private final LocalDate day;
    private final double[] mean;
    private final Precision precision;
    private final double[] weights;
    private final Map<Object, Double> otherWeights =
            new LinkedHashMap<>(); // of players and pairs that no game is about
    private final Map<Object, Estimate> others = new HashMap<>();

    WeightedSum(Unknowns unknowns, Laplace.Posterior posterior, LocalDate day) {
        this.day = day;
        this.unknowns = unknowns;
        this.mean = posterior.mode();
        this.precision = posterior.precision();
        this.weights = new double[mean.length];
    }

    WeightedSum add(Pair pair, double weight) {
        return add(pair.first(), weight / 2).add(pair.second(), weight / 2).addExtra(pair, weight);
    }

    WeightedSum add(PlayerId player, double weight) {
        double moved = unknowns.movedBy(player, day);
        if (moved > 0) {
            add(new Moved(player), OptionalInt.empty(), Estimate.of(0, Math.sqrt(moved)), weight);
        }
        return add(player, unknowns.of(player), unknowns.formBefore(player), weight);
    }

    WeightedSum addExtra(Pair pair, double weight) {
        return add(pair, unknowns.of(pair), unknowns.extraBefore(pair), weight);
    }

    WeightedSum add(int index, double weight) {
        weights[index] += weight;
        return this;
    }

    private WeightedSum add(Object whose, OptionalInt index, Estimate otherwise, double weight) {
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

    /** What two sums share of the doubt about those whom no game is about. */
    double othersWith(WeightedSum other) {
        double sum = 0;
        for (Map.Entry<Object, Double> mine : otherWeights.entrySet()) {
            Double theirs = other.otherWeights.get(mine.getKey());
            sum += theirs == null
                    ? 0
                    : mine.getValue()
                            * theirs
                            * Objects.requireNonNull(others.get(mine.getKey())).variance();
        }
        return sum;
    }

    Estimate estimate() {
        double variance = othersWith(this);
        for (double each : half()) {
            variance += each * each;
        }
        return Estimate.of(mean(), Math.sqrt(variance));
    }
}
