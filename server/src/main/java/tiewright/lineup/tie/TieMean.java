package tiewright.lineup.tie;

import java.util.Arrays;
import tiewright.lineup.DrawnChance;

/**
 * What one meeting of two sheets is worth over everything that the strengths could well be.
 *
 * <p>The rubbers of a tie and its decider share their doubt, so the mean is not that of independent rubbers with their mean
 * chances. It is that, which is exact, and what the draws say sharing adds: their mean, less what independent rubbers with the
 * averages of these same draws would be worth (a control variate; common practice). So a tie of one rubber is worth exactly
 * that rubber, and few draws are enough.
 *
 * @param draws how many of the draws are used; 0 = rubbers count as independent
 */
public record TieMean(EndWorths ends, int draws) {
    static final DrawnChance WON = DrawnChance.surely(1);
    private static final DrawnChance LOST = DrawnChance.surely(0);

    /** Our chance in each rubber that counts, as {@link Board#rubbers} has them, with their doubt. */
    public static DrawnChance[] rubbers(int[] ours, int[] theirs, DrawnChance[][] table) {
        DrawnChance[] rubbers = new DrawnChance[ours.length];
        int counted = 0;
        for (int rubber = 0; rubber < ours.length; rubber++) {
            if (ours[rubber] != Board.EMPTY) {
                rubbers[counted++] = theirs[rubber] == Board.EMPTY ? WON : table[ours[rubber]][theirs[rubber]];
            } else if (theirs[rubber] != Board.EMPTY) {
                rubbers[counted++] = LOST;
            }
        }
        return Arrays.copyOf(rubbers, counted);
    }

    double of(DrawnChance[] rubbers, DrawnChance decider) {
        double independent = ends.mean(
                TieOdds.wins(
                        Arrays.stream(rubbers).mapToDouble(DrawnChance::mean).toArray()),
                decider.mean());
        return draws == 0 ? independent : ends.within(rubbers.length, independent + shared(rubbers, decider));
    }

    /** What it adds that these rubbers and the decider share their doubt, by few of the draws. */
    public static double shared(EndWorths ends, DrawnChance[] rubbers, DrawnChance decider) {
        return new TieMean(ends, DrawnChance.FEW).shared(rubbers, decider);
    }

    private double shared(DrawnChance[] rubbers, DrawnChance decider) {
        double sum = 0;
        for (double each : ends.each(rubbers, decider, draws)) {
            sum += each;
        }
        double averages = ends.mean(
                TieOdds.wins(Arrays.stream(rubbers)
                        .mapToDouble(rubber -> rubber.average(draws))
                        .toArray()),
                decider.average(draws));
        return sum / draws - averages;
    }
}
