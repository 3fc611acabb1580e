package tiewright.scoring;

/**
 * Why a score cannot stand. A code with facts; the words are made elsewhere.
 *
 * @param game the game of the rubber, from 1 (a fault of the whole rubber names the game it shows in)
 * @param score that game as it was given; 0-0 if it was not given
 * @param number what the kind says
 */
public record ScoreFault(Kind kind, int game, Score score, int number) {

    /** What is wrong, and what {@link ScoreFault#number} is. */
    public enum Kind {
        /** Both sides have the same points, a finished game has a winner; number = target. */
        LEVEL,
        /** No side has the points to win; number = target. */
        NOBODY_REACHED_TARGET,
        /** The leader has the points but is one ahead; number = the points needed against this opponent. */
        NOT_TWO_AHEAD,
        /** The game was over before; number = the leader's points when it was. */
        WENT_ON_TOO_LONG,
        /** More points than the cap; number = cap. */
        OVER_CAP,
        /** Nobody has the majority of games; number = how many more games at least. */
        TOO_FEW_GAMES,
        /** A game after the rubber was decided; number = the game that decided it. */
        GAME_AFTER_DECIDED,
        /** Said to be unfinished by retirement, but somebody had won; number = the winner's points. */
        ALREADY_WON,
        /** The side that retired would have won the rubber; number = the games it won. */
        RETIRER_AHEAD_AT_END
    }

    ScoreFault inGame(int other) {
        return new ScoreFault(kind, other, score, number);
    }
}
