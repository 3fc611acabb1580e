package tiewright.lineup.tie;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.SomeDraws;
import tiewright.rating.Draws;

/**
 * What is a tie whose sheets are open worth now? Rubbers that are over count as they ended, the others by their chances, both
 * pairs known.
 *
 * @param tie our chance to win it
 * @param left our chance in each rubber that is left, in the order asked
 */
public record TieNow(Odds tie, List<Odds> left) {
    private static final DrawnChance WON = DrawnChance.surely(1);
    private static final DrawnChance LOST = DrawnChance.surely(0);

    public TieNow {
        left = List.copyOf(left);
    }

    /** Two pairs that will meet. */
    public record Meeting(Pair ours, Pair theirs) {}

    /**
     * How far the tie has come.
     *
     * @param over rubbers that were taken, walkovers counted: true where we took them; void ones are in neither map
     * @param decider the pairs of the decider, once they are known
     */
    public record SoFar(
            SortedMap<RubberNo, Boolean> over, SortedMap<RubberNo, Meeting> left, Optional<Meeting> decider) {
        public SoFar {
            over = Collections.unmodifiableSortedMap(new TreeMap<>(over));
            left = Collections.unmodifiableSortedMap(new TreeMap<>(left));
        }

        /** Every rubber, those that are over without doubt. */
        private DrawnChance[] rubbers(List<DrawnChance> open, int count) {
            DrawnChance[] all = new DrawnChance[count];
            Arrays.fill(all, EndWorths.voided());
            over.forEach((rubber, won) -> all[rubber.number() - 1] = won ? WON : LOST);
            int next = 0;
            for (RubberNo rubber : left.keySet()) {
                all[rubber.number() - 1] = open.get(next++);
            }
            return all;
        }

        private List<Pair> pairs() {
            return Stream.concat(left.values().stream(), decider.stream())
                    .flatMap(meeting -> Stream.of(meeting.ours(), meeting.theirs()))
                    .distinct()
                    .toList();
        }
    }

    /** A chance with both ends of its 95 % interval from the doubt about the strengths; 0 to 1. */
    public record Odds(double chance, double low, double high) {
        private static final double NORMAL_95 = 1.959963984540054;

        /** As it could well be, on the scale of log odds, where its doubt is about normal: for a game of which only this is known. */
        private double[] drawn(long seed) {
            Random random = new Random(seed);
            double sd = (logit(high) - logit(low)) / (2 * NORMAL_95);
            double[] drawn = new double[Draws.COUNT];
            for (int i = 0; i < drawn.length; i++) {
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
        EndWorths ends = EndWorths.of(Aim.WIN, problem.rules());
        Meetings meetings = new Meetings(problem, soFar.pairs());
        List<DrawnChance> open = soFar.left().values().stream()
                .map(meeting -> meetings.rubber(meeting.ours(), meeting.theirs()))
                .toList();
        DrawnChance decider = soFar.decider()
                .map(meeting -> meetings.decider(meeting.ours(), meeting.theirs()))
                .orElseGet(() -> new DrawnChance(unknown.chance(), () -> unknown.drawn(seed)));
        DrawnChance[] rubbers = soFar.rubbers(open, problem.rules().rubbers());
        SomeDraws draws = problem.strengths().isAtBestGuess() ? SomeDraws.NONE : SomeDraws.ALL;
        return new TieNow(
                Odds.of(new TieMean(ends, draws).of(rubbers, decider), ends.each(rubbers, decider, SomeDraws.ALL)),
                open.stream()
                        .map(chance -> Odds.of(chance.mean(), chance.draws()))
                        .toList());
    }
}
