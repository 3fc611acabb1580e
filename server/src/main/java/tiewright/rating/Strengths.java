package tiewright.rating;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/**
 * Form of players and extra of pairs with their doubt, in rallies won per 100 above an even game. Immutable.
 *
 * <p>A pair is as strong as the mean form of its two players and its extra. Nobody is unknown: a player without any
 * rating or game is an even player with wide doubt.
 */
public final class Strengths {
  private final Unknowns unknowns;
  private final double[] mean;
  private final double[][] covariance;

  Strengths(Unknowns unknowns, double[] mean, double[][] covariance) {
    this.unknowns = unknowns;
    this.mean = mean;
    this.covariance = covariance;
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
    double[][] root = root();
    double[][] rows = new double[count][];
    for (int i = 0; i < count; i++) {
      rows[i] = draw(pairs, root, random);
    }
    return rows;
  }

  private double[][] root() {
    if (covariance.length == 0) {
      return covariance;
    }
    return new CholeskyDecomposition(new Array2DRowRealMatrix(covariance), 1e-6, 0).getL().getData();
  }

  private double[] draw(List<Pair> pairs, double[][] root, SplittableRandom random) {
    double[] known = mean.clone();
    double[] normal = new double[known.length];
    for (int i = 0; i < known.length; i++) {
      normal[i] = random.nextGaussian();
      for (int j = 0; j <= i; j++) {
        known[i] += root[i][j] * normal[j];
      }
    }
    Map<Object, Double> others = new HashMap<>();
    double[] ratings = new double[pairs.size()];
    for (int i = 0; i < ratings.length; i++) {
      Pair pair = pairs.get(i);
      ratings[i] =
          (value(pair.first(), known, others, random) + value(pair.second(), known, others, random)) / 2
              + value(pair, known, others, random);
    }
    return ratings;
  }

  private double value(PlayerId player, double[] known, Map<Object, Double> others, SplittableRandom random) {
    OptionalInt index = unknowns.of(player);
    return index.isPresent()
        ? known[index.getAsInt()]
        : others.computeIfAbsent(player, p -> drawn(unknowns.prior().form(player), random));
  }

  private double value(Pair pair, double[] known, Map<Object, Double> others, SplittableRandom random) {
    OptionalInt index = unknowns.of(pair);
    return index.isPresent()
        ? known[index.getAsInt()]
        : others.computeIfAbsent(pair, p -> drawn(unknowns.prior().extra(pair), random));
  }

  private static double drawn(Estimate estimate, SplittableRandom random) {
    return estimate.mean() + estimate.sd() * random.nextGaussian();
  }

  /** A weighted sum of forms and extras, with its variance. */
  private final class Sum {
    private final double[] weights = new double[mean.length];
    private final Map<Object, Double> otherWeights = new HashMap<>(); // of players and pairs that no game is about
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

    private Sum add(Object whose, OptionalInt index, Estimate otherwise, double weight) {
      if (index.isPresent()) {
        weights[index.getAsInt()] += weight;
      } else {
        others.put(whose, otherwise);
        otherWeights.merge(whose, weight, Double::sum);
      }
      return this;
    }

    Estimate estimate() {
      double sum = 0;
      double variance = 0;
      for (Map.Entry<Object, Double> other : otherWeights.entrySet()) {
        sum += other.getValue() * others.get(other.getKey()).mean();
        variance += other.getValue() * other.getValue() * others.get(other.getKey()).variance();
      }
      for (int i = 0; i < weights.length; i++) {
        sum += weights[i] * mean[i];
        for (int j = 0; weights[i] != 0 && j < weights.length; j++) {
          variance += weights[i] * weights[j] * covariance[i][j];
        }
      }
      return Estimate.of(sum, Math.sqrt(Math.max(0, variance)));
    }
  }
}
