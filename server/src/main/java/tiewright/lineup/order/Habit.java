package tiewright.lineup.order;

import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.lineup.Squad;
import tiewright.rating.Strengths;

/**
 * How often the other club went straight, its stronger pairs above its weaker ones, in the sheets that were opened so far.
 *
 * @param straight of these
 * @param sheets opened, two pairs or more on each
 */
public record Habit(int straight, int sheets) {
    private static final double RARE = 0.05;

    public Habit {
        if (straight < 0 || straight > sheets) {
            throw new IllegalArgumentException(straight + " of " + sheets);
        }
    }

    /** By rank sums where everybody named has a rank, else by the strengths as this captain rates them. */
    static Habit of(Squad theirs, Strengths strengths, List<Sheet> opened) {
        List<Sheet> telling =
                opened.stream().filter(sheet -> pairs(sheet).size() > 1).toList();
        return new Habit(
                (int) telling.stream()
                        .filter(sheet -> isStraight(theirs, strengths, sheet))
                        .count(),
                telling.size());
    }

    private static List<Pair> pairs(Sheet sheet) {
        return sheet.pairs().values().stream().flatMap(Optional::stream).toList();
    }

    private static boolean isStraight(Squad theirs, Strengths strengths, Sheet sheet) {
        List<Pair> pairs = pairs(sheet);
        boolean ranked = sheet.players().stream()
                .allMatch(player -> theirs.member(player)
                        .filter(member -> member.rank().isPresent())
                        .isPresent());
        for (int i = 1; i < pairs.size(); i++) {
            boolean falls = ranked
                    ? theirs.rank(pairs.get(i).first())
                                    + theirs.rank(pairs.get(i).second())
                            < theirs.rank(pairs.get(i - 1).first())
                                    + theirs.rank(pairs.get(i - 1).second())
                    : strengths.meanRating(pairs.get(i)) > strengths.meanRating(pairs.get(i - 1));
            if (falls) {
                return false;
            }
        }
        return true;
    }

    /**
     * Chance of a count at least this far from half of the sheets if straight or not were the toss of a coin: exact two-sided
     * binomial test, the points as likely or less likely added up (Clopper and Pearson, Biometrika 26, 1934; the rule of R's
     * binom.test).
     */
    public double byChance() {
        BinomialDistribution coin = new BinomialDistribution(sheets, 0.5);
        double seen = coin.probability(straight) * (1 + 1e-7);
        double sum = 0;
        for (int count = 0; count <= sheets; count++) {
            sum += coin.probability(count) <= seen ? coin.probability(count) : 0;
        }
        return Math.min(1, sum);
    }

    /** A coin would do that often enough: in more than one of twenty days. */
    public boolean couldBeChance() {
        return byChance() > RARE;
    }

    /** Lower end of the exact 95 % interval of the share (Clopper and Pearson). */
    public double low() {
        return straight == 0
                ? 0
                : new BetaDistribution(straight, sheets - straight + 1.0).inverseCumulativeProbability(0.025);
    }

    public double high() {
        return straight == sheets
                ? 1
                : new BetaDistribution(straight + 1.0, sheets - straight).inverseCumulativeProbability(0.975);
    }

    /** How likely they go straight next time: one more of each kind counted than was seen (Laplace's rule of succession). */
    public double next() {
        return (straight + 1.0) / (sheets + 2.0);
    }
}
