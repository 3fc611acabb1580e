package tiewright.lineup.tie;

import tiewright.lineup.Aim;

/** What the sheets of one problem are worth: under the captain's aim, as a chance to win, and as a chance to finish level. */
public final class TieWorth {
    private final Board board;
    private final EndWorths aim;
    private final EndWorths win;

    TieWorth(Board board) {
        this.board = board;
        this.aim = new EndWorths(board.problem().purpose().aim(), board.rules());
        this.win = new EndWorths(Aim.WIN, board.rules());
    }

    /** What the captain wants, mean over what the other club may send. */
    public double of(int[] line) {
        return mean(line, aim);
    }

    /** Chance to win the tie. */
    double chance(int[] line) {
        return mean(line, win);
    }

    private double mean(int[] line, EndWorths ends) {
        double[] levels = board.levelWorth().of(line);
        int[][] expected = board.expectedLines();
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            sum += board.weights()[i]
                    * ends.mean(TieOdds.wins(Board.rubbers(line, expected[i], board.chances())), levels[i]);
        }
        return sum;
    }

    /** What winning one rubber for sure instead of losing it adds to the aim, against one sheet of theirs. */
    public double swing(int[] line, int sheet, int rubber) {
        double[] rubbers = Board.rubbers(line, board.expectedLines()[sheet], board.chances());
        int place = 0;
        for (int above = 0; above < rubber; above++) {
            place += line[above] != Board.EMPTY || board.expectedLines()[sheet][above] != Board.EMPTY ? 1 : 0;
        }
        double level = board.levelWorth().of(line)[sheet];
        rubbers[place] = 1;
        double won = aim.mean(TieOdds.wins(rubbers), level);
        rubbers[place] = 0;
        return won - aim.mean(TieOdds.wins(rubbers), level);
    }

    /** Chance that the rubbers finish level. */
    double level(int[] line) {
        int[][] expected = board.expectedLines();
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            sum += board.weights()[i]
                    * TieOdds.of(Board.rubbers(line, expected[i], board.chances()))
                            .level();
        }
        return sum;
    }

    /** The aim, if an even pair stood in each rubber that is left empty. */
    double withEvenPairs(int[] line) {
        double[] levels = board.levelWorth().of(line);
        int[][] expected = board.expectedLines();
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            double[] rubbers = new double[line.length];
            for (int rubber = 0; rubber < line.length; rubber++) {
                int theirs = expected[i][rubber];
                double even = line[rubber] == Board.EMPTY
                        ? 0.5
                        : theirs == Board.EMPTY ? 1 : board.chances()[line[rubber]][theirs];
                rubbers[rubber] = line[rubber] == Board.EMPTY && theirs == Board.EMPTY ? 1 : even;
            }
            sum += board.weights()[i] * aim.mean(TieOdds.wins(rubbers), levels[i]);
        }
        return sum;
    }

    /** The ends under the aim, for chances worked out elsewhere. */
    EndWorths aim() {
        return aim;
    }

    EndWorths win() {
        return win;
    }
}
