package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.lineup.Aim;
import tiewright.lineup.EdgeCurve;
import tiewright.lineup.LineupProblem;
import tiewright.rating.RallyModel;

/**
 * What is a tie whose sheets are open worth now? Rubbers that are over count as they ended, the others by their chances, both
 * pairs known.
 *
 * @param tie our chance to win it
 * @param left our chance in each rubber that is left, in the order asked
 */
public record TieNow(Odds tie, List<Odds> left) {
    private static final int DRAWS = 400;

    public TieNow {
        left = List.copyOf(left);
    }

    /** Two pairs that will meet. */
    public record Meeting(Pair ours, Pair theirs) {}

    /**
     * How far the tie has come.
     *
     * @param won rubbers that we took, walkovers counted; {@code lost} those that they took
     * @param decider the pairs of the decider, once they are known
     */
    public record SoFar(int won, int lost, List<Meeting> left, Optional<Meeting> decider) {
        public SoFar {
            left = List.copyOf(left);
        }

        private double[] wins(ToDoubleFunction<Meeting> chance) {
            double[] chances = new double[won + lost + left.size()];
            Arrays.fill(chances, 0, won, 1);
            for (int i = 0; i < left.size(); i++) {
                chances[won + lost + i] = chance.applyAsDouble(left.get(i));
            }
            return TieOdds.wins(chances);
        }
    }

    /** A chance with both ends of its 95 % interval from the doubt about the strengths; 0 to 1. */
    public record Odds(double chance, double low, double high) {
        private static final double NORMAL_95 = 1.959963984540054;

        /** As it could well be, on the scale of log odds, where its doubt is about normal: for a game of which only this is known. */
        private double[] drawn(long seed) {
            Random random = new Random(seed);
            double sd = (logit(high) - logit(low)) / (2 * NORMAL_95);
            double[] drawn = new double[DRAWS];
            for (int i = 0; i < DRAWS; i++) {
                drawn[i] = 1 / (1 + Math.exp(-(logit(chance) + sd * random.nextGaussian())));
            }
            return drawn;
        }

        private static double logit(double chance) {
            double within = Math.max(1e-9, Math.min(1 - 1e-9, chance));
            return Math.log(within / (1 - within));
        }

        private static Odds of(double chance, double[] drawn) {
            return new Odds(chance, Math.min(chance, Doubt.low(drawn)), Math.max(chance, Doubt.high(drawn)));
        }
    }

    /**
     * Works it out.
     *
     * @param unknown our chance in a decider whose pairs nobody knows yet, and how sure it is
     */
    public static TieNow of(LineupProblem problem, SoFar soFar, Odds unknown, long seed) {
        EndWorths ends = new EndWorths(Aim.WIN, problem.rules());
        Drawn drawn = Drawn.of(problem, soFar, seed);
        double best = ends.mean(
                soFar.wins(meeting -> rubber(problem, meeting)),
                soFar.decider().map(meeting -> decider(problem, meeting)).orElse(unknown.chance()));
        double[] unsure = unknown.drawn(seed);
        EdgeCurve rubber =
                new EdgeCurve(problem.rules().scoring(), problem.rules().bestOf());
        EdgeCurve decider = new EdgeCurve(problem.rules().deciderScoring(), 1);
        double[] ties = drawn.each((edge, draw) -> ends.mean(
                soFar.wins(meeting -> rubber.chance(edge.applyAsDouble(meeting))),
                soFar.decider()
                        .map(meeting -> decider.chance(edge.applyAsDouble(meeting)))
                        .orElse(unsure[draw])));
        return new TieNow(
                Odds.of(best, ties),
                soFar.left().stream()
                        .map(meeting -> Odds.of(
                                rubber(problem, meeting),
                                drawn.each((edge, draw) -> rubber.chance(edge.applyAsDouble(meeting)))))
                        .toList());
    }

    private static double rubber(LineupProblem problem, Meeting meeting) {
        return RallyModel.rubberChance(
                problem.rules().scoring(), problem.rules().bestOf(), problem.edge(meeting.ours(), meeting.theirs()));
    }

    private static double decider(LineupProblem problem, Meeting meeting) {
        return RallyModel.rubberChance(
                problem.rules().deciderScoring(), 1, problem.edge(meeting.ours(), meeting.theirs()));
    }

    /** The strengths of all pairs as they could well be, drawn together. */
    private record Drawn(LineupProblem problem, List<Pair> pairs, double[][] ratings) {
        static Drawn of(LineupProblem problem, SoFar soFar, long seed) {
            List<Pair> pairs = Stream.concat(soFar.left().stream(), soFar.decider().stream())
                    .flatMap(meeting -> Stream.of(meeting.ours(), meeting.theirs()))
                    .distinct()
                    .toList();
            return new Drawn(
                    problem,
                    new ArrayList<>(pairs),
                    pairs.isEmpty() ? new double[DRAWS][0] : problem.strengths().draws(pairs, DRAWS, seed));
        }

        /** In each draw what comes of the edges of that draw. */
        double[] each(OfDraw what) {
            double[] all = new double[ratings.length];
            for (int draw = 0; draw < all.length; draw++) {
                double[] rating = ratings[draw];
                all[draw] = what.of(meeting -> rating(rating, meeting.ours()) - rating(rating, meeting.theirs()), draw);
            }
            return all;
        }

        private double rating(double[] rating, Pair pair) {
            return rating[pairs.indexOf(pair)] - problem.freshness().loss(pair);
        }
    }

    /** What one draw of the strengths comes to. */
    private interface OfDraw {
        double of(ToDoubleFunction<Meeting> edge, int draw);
    }
}
