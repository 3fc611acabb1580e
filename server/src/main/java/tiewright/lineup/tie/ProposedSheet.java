package tiewright.lineup.tie;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.lineup.Reason;

/**
 * A legal sheet and what it is worth.
 *
 * @param rank 1 the best; 0 for a sheet that the captain made, and for one that stands beside the ranking
 * @param worth of the captain's aim: the chance to win, rubbers ahead, or the chance to go through
 * @param chance to win the tie, mean over what the strengths could well be and over what the other club may send
 * @param level chance that the rubbers finish level, so that a decider is played or the tie is drawn
 * @param low lower end of the 95 % interval of the chance, from the doubt about the strengths
 * @param high upper end
 * @param cost what it gives away of the aim against the best sheet that grants the same wishes, 0 or more
 * @param beatsBest in what share of the plausible strengths it is better than the best one; 0.5 = nobody can tell
 */
public record ProposedSheet(
        int rank,
        Sheet sheet,
        List<Line> lines,
        double worth,
        double chance,
        double level,
        double low,
        double high,
        double cost,
        double beatsBest,
        List<Reason> reasons) {
    public ProposedSheet {
        lines = List.copyOf(lines);
        reasons = List.copyOf(reasons);
    }

    /** How often the other one must be better before this one is called the worse. */
    private static final double SURE = 0.9;

    /** Nobody can tell it from the best: it is the better one in more than one of ten plausible strengths. */
    public boolean isWithinDoubt() {
        return beatsBest > 1 - SURE;
    }

    /** With more to say of it. */
    ProposedSheet saying(List<Reason> more) {
        List<Reason> all = Stream.concat(reasons.stream(), more.stream()).toList();
        return new ProposedSheet(rank, sheet, lines, worth, chance, level, low, high, cost, beatsBest, all);
    }

    /**
     * One rubber.
     *
     * @param pair empty = nobody
     * @param chance that we win it, mean over what the other club may send; empty = it may not be played, neither club having
     *     a pair
     * @param range of that chance; empty as it is
     */
    public record Line(RubberNo rubber, Optional<Pair> pair, Optional<Double> chance, Optional<Range> range) {}

    /** Both ends of a 95 % interval, from the doubt about the strengths; 0 to 1. */
    public record Range(double low, double high) {
        static Range of(double[] drawn) {
            return new Range(Doubt.low(drawn), Doubt.high(drawn));
        }
    }
}
