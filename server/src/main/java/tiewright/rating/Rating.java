package tiewright.rating;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The strengths after past games: the most likely forms and extras given the prior and the scores, with a normal
 * approximation around them (Laplace).
 *
 * <p>Each game counts through the exact chance of its score, see {@link RallyModel}; its date is not used. A pair that only
 * ever plays together and against nobody else's partners cannot be told apart into form and extra: the doubts then stay
 * as wide as the prior left them, and only their sum narrows.
 */
public final class Rating {
  private static final int MOST_ROUNDS = 60;
  private static final double CLOSE_ENOUGH = 1e-9;
  private static final double NUDGE = 0.05; // rallies per 100, for differences
  private static final double LEAST_WEIGHT = 1e-9;

  private final Unknowns unknowns;
  private final List<PastGame> games;
  private final double[] prior;
  private final double[] precision;

  private Rating(Prior prior, List<PastGame> games) {
    this.games = List.copyOf(games);
    this.unknowns = Unknowns.of(prior, games);
    List<Estimate> estimates = unknowns.priors();
    this.prior = estimates.stream().mapToDouble(Estimate::mean).toArray();
    this.precision = estimates.stream().mapToDouble(estimate -> 1 / Math.max(estimate.variance(), 1e-12)).toArray();
  }

  /** Strengths by the prior alone when there is no game. */
  public static Strengths fit(Prior prior, List<PastGame> games) {
    return new Rating(prior, games).fit();
  }

  private Strengths fit() {
    if (prior.length == 0) {
      return new Strengths(unknowns, prior, new double[0][0]);
    }
    double[] at = prior.clone();
    RealMatrix curvature = curvature(at);
    for (int round = 0; round < MOST_ROUNDS && !games.isEmpty(); round++) {
      double[] step = step(at, curvature);
      double[] next = shortened(at, step);
      double moved = distance(at, next);
      at = next;
      curvature = curvature(at);
      if (moved < CLOSE_ENOUGH) {
        break;
      }
    }
    return new Strengths(unknowns, at, new CholeskyDecomposition(curvature).getSolver().getInverse().getData());
  }

  private double[] step(double[] at, RealMatrix curvature) {
    double[] slope = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      slope[i] = precision[i] * (prior[i] - at[i]);
    }
    for (PastGame game : games) {
      double edge = unknowns.edge(game, at);
      double rise = (log(game, edge + NUDGE) - log(game, edge - NUDGE)) / (2 * NUDGE);
      unknowns.parts(game).forEach(part -> slope[part.index()] += rise * part.weight());
    }
    RealVector solved = new CholeskyDecomposition(curvature).getSolver().solve(new ArrayRealVector(slope, false));
    return solved.toArray();
  }

  /** Minus the second derivatives of the log posterior. */
  private RealMatrix curvature(double[] at) {
    RealMatrix dense = MatrixUtils.createRealMatrix(precision.length, precision.length);
    for (int i = 0; i < precision.length; i++) {
      dense.setEntry(i, i, precision[i]);
    }
    for (PastGame game : games) {
      double edge = unknowns.edge(game, at);
      double bend = -(log(game, edge + NUDGE) - 2 * log(game, edge) + log(game, edge - NUDGE)) / (NUDGE * NUDGE);
      double weight = Math.max(bend, LEAST_WEIGHT);
      List<Unknowns.Part> parts = unknowns.parts(game);
      for (Unknowns.Part one : parts) {
        for (Unknowns.Part other : parts) {
          dense.addToEntry(one.index(), other.index(), weight * one.weight() * other.weight());
        }
      }
    }
    return dense;
  }

  /** Halves the step until the posterior rises, so that a wild score cannot throw the search. */
  private double[] shortened(double[] at, double[] step) {
    double before = logPosterior(at);
    double[] next = at;
    for (double share = 1; share > 1e-6; share /= 2) {
      next = at.clone();
      for (int i = 0; i < at.length; i++) {
        next[i] += share * step[i];
      }
      if (logPosterior(next) >= before) {
        return next;
      }
    }
    return at;
  }

  private double logPosterior(double[] at) {
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      sum -= precision[i] * (at[i] - prior[i]) * (at[i] - prior[i]) / 2;
    }
    for (PastGame game : games) {
      sum += log(game, unknowns.edge(game, at));
    }
    return sum;
  }

  private static double log(PastGame game, double edge) {
    return RallyModel.logChance(game.format(), game.score(), edge);
  }

  private static double distance(double[] one, double[] other) {
    double[] gap = new double[one.length];
    Arrays.setAll(gap, i -> Math.abs(one[i] - other[i]));
    return Arrays.stream(gap).max().orElse(0);
  }
}
