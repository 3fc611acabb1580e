package tiewright.lineup.tie;

import java.util.function.IntFunction;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.SomeDraws;
import tiewright.rating.Draws;

/**
 * What the sheets of one problem are worth: under the captain's aim, as a chance to win, and as a chance to finish level. Each
 * the mean over what the other club may send and over what the strengths could well be.
 */
public final class TieWorth {
    private static final int FEW_SHEETS = 4;
    private static final int SCATTER = 0x9E3779B9; // the golden ratio: neighbours lie far apart
    private static final int TOP_BITS = 24; // below them
    private static final DrawnChance EVEN = DrawnChance.surely(0.5);

    private final Board board;
    private final EndWorths aim;
    private final EndWorths win;
    private final boolean bestGuess;

    TieWorth(Board board) {
        this.board = board;
        this.aim = EndWorths.of(board.problem().purpose().aim(), board.rules());
        this.win = EndWorths.of(Aim.WIN, board.rules());
        this.bestGuess = board.problem().strengths().isAtBestGuess();
    }

    /** What the captain wants. */
    public double of(int[] line) {
        return mean(line, aim, sheet -> dealt(line, sheet));
    }

    /** The same for a search: by few draws where the other club may send many sheets. */
    double rough(int[] line) {
        boolean many = board.expectedLines().length > FEW_SHEETS;
        return mean(line, aim, sheet -> many ? SomeDraws.FEW : SomeDraws.ALL);
    }

    /** The same with rubbers as if they shared no doubt, for a first look at very many sheets. */
    public double quick(int[] line) {
        DrawnChance[] levels = board.levelWorth().of(line);
        int[][] expected = board.expectedLines();
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            sum += board.weights()[i] * aim.mean(Board.rubbers(line, expected[i], board.chances()), levels[i].mean());
        }
        return sum;
    }

    /** Chance to win the tie. */
    double chance(int[] line) {
        return mean(line, win, sheet -> dealt(line, sheet));
    }

    /** Chance that the rubbers finish level. */
    double level(int[] line) {
        return mean(line, EndWorths.level(board.rules()), sheet -> dealt(line, sheet));
    }

    private double mean(int[] line, EndWorths ends, IntFunction<SomeDraws> draws) {
        if (bestGuess && ends == aim) {
            return quick(line);
        }
        DrawnChance[] levels = board.levelWorth().of(line);
        int[][] expected = board.expectedLines();
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            TieMean worth = new TieMean(ends, bestGuess ? SomeDraws.NONE : draws.apply(i));
            sum += board.weights()[i] * worth.of(board.rubbers(line, expected[i]), levels[i]);
        }
        return sum;
    }

    /** The same for the same pairs against the same pairs in whatever order, so that an order that is worth nothing shows as nothing. */
    private SomeDraws dealt(int[] line, int sheet) {
        int[] theirs = board.expectedLines()[sheet];
        int who = 0;
        for (int rubber = 0; rubber < line.length; rubber++) {
            int both = (line[rubber] + 2) * (board.opponents().size() + 2) + theirs[rubber] + 2;
            who += both * both * SCATTER;
        }
        return SomeDraws.dealt(board.expectedLines().length, who >>> TOP_BITS);
    }

    /** The chance to win in each draw; {@link #worths} what the captain wants. */
    double[] chances(int[] line) {
        return each(line, win);
    }

    double[] worths(int[] line) {
        return each(line, aim);
    }

    private double[] each(int[] line, EndWorths ends) {
        DrawnChance[] levels = board.levelWorth().of(line);
        int[][] expected = board.expectedLines();
        double[] sum = new double[Draws.COUNT];
        for (int i = 0; i < expected.length; i++) {
            double[] each = ends.each(board.rubbers(line, expected[i]), levels[i], SomeDraws.ALL);
            for (int draw = 0; draw < sum.length; draw++) {
                sum[draw] += board.weights()[i] * each[draw];
            }
        }
        return sum;
    }

    /** What winning one rubber for sure instead of losing it adds to the aim, against one sheet of theirs. */
    public double swing(int[] line, int sheet, int rubber) {
        double[] rubbers = Board.rubbers(line, board.expectedLines()[sheet], board.chances());
        double level = board.levelWorth().of(line)[sheet].mean();
        rubbers[rubber] = 1;
        double won = aim.mean(rubbers, level);
        rubbers[rubber] = 0;
        return won - aim.mean(rubbers, level);
    }

    /** The aim, if an even pair stood in each rubber that is left empty. */
    double withEvenPairs(int[] line) {
        DrawnChance[] levels = board.levelWorth().of(line);
        int[][] expected = board.expectedLines();
        TieMean worth = new TieMean(aim, bestGuess ? SomeDraws.NONE : SomeDraws.ALL);
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            DrawnChance[] rubbers = new DrawnChance[line.length];
            for (int rubber = 0; rubber < line.length; rubber++) {
                int theirs = expected[i][rubber];
                boolean empty = line[rubber] == Board.EMPTY && theirs != Board.EMPTY;
                rubbers[rubber] =
                        empty ? EVEN : theirs == Board.EMPTY ? TieMean.WON : board.chance(line[rubber], theirs);
            }
            sum += board.weights()[i] * worth.of(rubbers, levels[i]);
        }
        return sum;
    }
}
