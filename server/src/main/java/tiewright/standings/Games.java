package tiewright.standings;

import tiewright.scoring.Format;

/**
 * The games of a rubber, as far as tables need them.
 *
 * @param toWin games that take the rubber, 1 or more
 * @param target points that a game is played to
 * @param overtimeCapped points beyond the target do not count: the winner has at most the target, the loser one less
 * @param leastMargin points by which a game can be won in the table, at least; every number up to the most can happen
 * @param reachesTarget the winner of a game has the target or more; false where time stops a game
 */
public record Games(
        int toWin, int target, boolean overtimeCapped, int leastMargin, int mostMargin, boolean reachesTarget) {
    /** So many points as no game can bring. */
    private static final int NO_LIMIT = 10_000;

    public Games {
        if (toWin < 1 || target < 1 || leastMargin < 1 || mostMargin < leastMargin) {
            throw new IllegalArgumentException("no rubber is played like this: " + toWin + " to win, to " + target
                    + ", won by " + leastMargin + " to " + mostMargin);
        }
    }

    /** Games of a format, best of 1, 3, 5, …, as they count in the table. */
    public static Games of(Format format, int bestOf, boolean overtimeCapped) {
        boolean byTwo = format.isOpenEnded() && !overtimeCapped;
        int most = overtimeCapped ? format.target() : format.winningScoreAgainst(0);
        return new Games(bestOf / 2 + 1, format.target(), overtimeCapped, byTwo ? 2 : 1, most, true);
    }

    /** Games that stop when the time is over, with the score as it stands. */
    public Games stoppedByTime() {
        return new Games(toWin, target, overtimeCapped, 1, NO_LIMIT, false);
    }

    /** The points of one side of a game as they count. */
    int counted(int own, int other) {
        if (!overtimeCapped) {
            return own;
        }
        return Math.min(own, own > other ? target : target - 1);
    }
}
