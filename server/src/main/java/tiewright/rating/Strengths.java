package tiewright.rating;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

/**
 * Form of players and extra of pairs with their doubt, in rallies won per 100 above an even game.
 *
 * <p>A pair is as strong as the mean form of its two players and its extra. Nobody is unknown: a player without any
 * rating or game is an even player with wide doubt.
 */
public final class Strengths {
    private final Unknowns unknowns;
    private final Laplace.Posterior posterior;
    private final LocalDate day;
    private final long seed;
    private final boolean bestGuess;
    private final Map<String, EdgeCurve> curves;
    private volatile @Nullable Asked asked;

    Strengths(Unknowns unknowns, Laplace.Posterior posterior) {
        this.unknowns = unknowns;
        this.posterior = posterior;
        this.day = unknowns.today();
        this.seed = 1;
        this.bestGuess = false;
        this.curves = new ConcurrentHashMap<>();
    }

    private Strengths(Strengths same, LocalDate day, long seed, boolean bestGuess) {
        this.unknowns = same.unknowns;
        this.posterior = same.posterior;
        this.day = day;
        this.seed = seed;
        this.bestGuess = bestGuess;
        this.curves = same.curves;
    }

    public Estimate form(PlayerId player) {
        return sum().add(player, 1).estimate();
    }

    public Estimate extra(Pair pair) {
        return sum().addExtra(pair, 1).estimate();
    }

    /** Mean form and extra. */
    public Estimate rating(Pair pair) {
        return sum().add(pair, 1).estimate();
    }

    /** The mean of {@link #rating} alone: how sure it is takes far longer to say. */
    public double meanRating(Pair pair) {
        return sum().add(pair, 1).mean();
    }

    /** The mean of {@link #form} alone. */
    public double meanForm(PlayerId player) {
        return sum().add(player, 1).mean();
    }

    /** How much stronger the first pair is; the two may share a player. */
    public Estimate edge(Pair ours, Pair theirs) {
        return sum().add(ours, 1).add(theirs, -1).estimate();
    }

    /** What serving is worth beyond the usual rate, in rallies won per 100; empty where no such game was filmed. */
    public Optional<Estimate> serving(Format.Kind kind) {
        OptionalInt index = unknowns.of(kind);
        return index.isEmpty()
                ? Optional.empty()
                : Optional.of(sum().add(index.getAsInt(), 1).estimate());
    }

    /** Chance that the first pair is at least as strong as the second; a half where they are equal beyond doubt. */
    public double chanceAsStrong(Pair one, Pair other) {
        Estimate ahead = edge(one, other);
        if (ahead.sd() == 0) {
            return ahead.mean() > 0 ? 1 : ahead.mean() < 0 ? 0 : 0.5;
        }
        return new NormalDistribution().cumulativeProbability(ahead.mean() / ahead.sd());
    }

    /** The chance of the first to win, by the mean over what its edge may be; by the edge alone where best guesses are asked. */
    public double chance(Format format, int bestOf, Estimate edge) {
        return bestGuess
                ? plainChance(format, bestOf, edge.mean())
                : curve(format, bestOf).mean(edge);
    }

    /** The chance of a rubber at exactly this edge, its games sharing nothing else. */
    public double plainChance(Format format, int bestOf, double edge) {
        return RallyModel.rubberChance(assumptions().serving(), format, bestOf, edge);
    }

    /** What all of it rests on beside games and judgements. */
    public Assumptions assumptions() {
        return unknowns.assumptions();
    }

    /** The same carried to another day: forms may have moved since their last game. */
    public Strengths on(LocalDate other) {
        return new Strengths(this, other, seed, bestGuess);
    }

    /** The chance of a rubber for any edge. */
    public EdgeCurve curve(Format format, int bestOf) {
        return curves.computeIfAbsent(
                format.code() + " " + bestOf,
                any -> new EdgeCurve(assumptions().serving(), format, bestOf)
                        .sharing(bestOf > 1 ? assumptions().shared() : 0));
    }

    /** The same, with every chance as if all strengths were at their best guess, as it is where only exact sums are asked. */
    public Strengths atBestGuess() {
        return new Strengths(this, day, seed, true);
    }

    /** The same, with draws by another seed. */
    public Strengths drawnBy(long other) {
        return other == seed ? this : new Strengths(this, day, other, bestGuess);
    }

    public boolean isAtBestGuess() {
        return bestGuess;
    }

    /** These pairs together, each named once; what was asked last is kept. */
    public Joint joint(List<Rated> pairs) {
        Asked before = asked;
        if (before != null && before.pairs().equals(pairs)) {
            return before.joint();
        }
        Joint joint = work(pairs);
        asked = new Asked(List.copyOf(pairs), joint);
        return joint;
    }

    private Joint work(List<Rated> pairs) {
        List<WeightedSum> sums = pairs.stream()
                .map(each -> each.together()
                        ? sum().add(each.pair(), 1)
                        : sum().add(each.pair().first(), 0.5).add(each.pair().second(), 0.5))
                .toList();
        double[][] halves = sums.stream().map(WeightedSum::half).toArray(double[][]::new);
        double[][] covariance = new double[halves.length][halves.length];
        for (int i = 0; i < halves.length; i++) {
            for (int j = 0; j <= i; j++) {
                covariance[i][j] = covariance[j][i] =
                        product(halves[i], halves[j]) + sums.get(i).othersWith(sums.get(j));
            }
        }
        return new Joint(pairs, sums.stream().mapToDouble(WeightedSum::mean).toArray(), covariance, seed);
    }

    private WeightedSum sum() {
        return new WeightedSum(unknowns, posterior, day);
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private record Asked(List<Rated> pairs, Joint joint) {}
}
