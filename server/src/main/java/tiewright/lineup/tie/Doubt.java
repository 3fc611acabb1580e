package tiewright.lineup.tie;

import java.util.Arrays;
import java.util.Optional;
import tiewright.event.RubberNo;
import tiewright.lineup.DrawnChance;
import tiewright.rating.Draws;

/**
 * How sure is a tie chance? What it is in each draw of the strengths. The same draws serve every sheet, so that two sheets can be
 * compared.
 */
final class Doubt {
    private static final double TAIL = 0.025;

    private final Board board;

    Doubt(Board board) {
        this.board = board;
    }

    /** The tie chance of a sheet in each draw. */
    double[] chances(int[] line) {
        return board.worth().chances(line);
    }

    /** What the captain wants, in each draw. */
    double[] worths(int[] line) {
        return board.worth().worths(line);
    }

    /** One rubber of a sheet with its chance and how sure that is. */
    ProposedSheet.Line rubberOf(int[] line, int rubber) {
        Optional<Double> chance = board.rubberChance(line, rubber);
        RubberNo number = RubberNo.of(rubber + 1);
        return new ProposedSheet.Line(
                number,
                board.sheet(line).pair(number),
                chance,
                chance.map(known -> ProposedSheet.Range.of(rubber(line, rubber))));
    }

    /** Our chance in one rubber in each draw, mean over what the other club may send. */
    private double[] rubber(int[] line, int rubber) {
        double[] sum = new double[Draws.COUNT];
        for (int i = 0; line[rubber] != Board.EMPTY && i < board.expectedLines().length; i++) {
            int their = board.expectedLines()[i][rubber];
            DrawnChance chance = their == Board.EMPTY ? TieMean.WON : board.chance(line[rubber], their);
            double[] draws = chance.draws();
            for (int draw = 0; draw < sum.length; draw++) {
                sum[draw] = Math.min(1, sum[draw] + board.weights()[i] * draws[draw]);
            }
        }
        return sum;
    }

    /** Ends of the 95 % interval of what was drawn. */
    static double low(double[] drawn) {
        return sorted(drawn)[(int) (TAIL * drawn.length)];
    }

    static double high(double[] drawn) {
        return sorted(drawn)[drawn.length - 1 - (int) (TAIL * drawn.length)];
    }

    private static double[] sorted(double[] drawn) {
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** In what share of the draws is the first better than the second? Equal ones count half. */
    static double better(double[] first, double[] second) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += first[i] > second[i] ? 1 : first[i] == second[i] ? 0.5 : 0;
        }
        return sum / first.length;
    }
}
