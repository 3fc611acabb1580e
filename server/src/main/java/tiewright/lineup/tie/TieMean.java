package tiewright.lineup.tie;

import tiewright.lineup.DrawnChance;
import tiewright.lineup.SomeDraws;

/**
 * What one meeting of two sheets is worth over everything that the strengths could well be.
 *
 * <p>The rubbers of a tie and its decider share their doubt, so the mean is not that of independent rubbers with their mean
 * chances. It is that, which is exact, and what the draws say sharing adds: their mean, less what independent rubbers with the
 * averages of these same draws would be worth (a control variate; common practice). So a tie of one rubber is worth exactly
 * that rubber, and few draws are enough.
 *
 * @param draws which of them are used; none = rubbers count as independent
 */
public record TieMean(EndWorths ends, SomeDraws draws) {
    static final DrawnChance WON = DrawnChance.surely(1);
    private static final DrawnChance LOST = DrawnChance.surely(0);

    /** Our chance in each rubber, as {@link Board#rubbers} has them, with their doubt. */
    public static DrawnChance[] rubbers(int[] ours, int[] theirs, DrawnChance[][] table) {
        DrawnChance[] rubbers = new DrawnChance[ours.length];
        for (int rubber = 0; rubber < ours.length; rubber++) {
            boolean missing = theirs[rubber] == Board.EMPTY;
            if (ours[rubber] != Board.EMPTY) {
                rubbers[rubber] = missing ? WON : table[ours[rubber]][theirs[rubber]];
            } else {
                rubbers[rubber] = missing ? EndWorths.voided() : LOST;
            }
        }
        return rubbers;
    }

    double of(DrawnChance[] rubbers, DrawnChance decider) {
        double independent = ends.meanOfMeans(rubbers, decider);
        return draws.equals(SomeDraws.NONE)
                ? independent
                : ends.within(rubbers, independent + shared(rubbers, decider));
    }

    /** What it adds that these rubbers and the decider share their doubt, by few of the draws. */
    public static double shared(EndWorths ends, DrawnChance[] rubbers, DrawnChance decider) {
        return new TieMean(ends, SomeDraws.FEW).shared(rubbers, decider);
    }

    private double shared(DrawnChance[] rubbers, DrawnChance decider) {
        double sum = 0;
        for (double each : ends.each(rubbers, decider, draws)) {
            sum += each;
        }
        return sum / draws.count() - ends.meanOfAverages(rubbers, decider, draws);
    }
}
