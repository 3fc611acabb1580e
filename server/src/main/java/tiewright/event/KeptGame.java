package tiewright.event;

import tiewright.event.PrivateNote.PastGame;

/**
 * An earlier game that a club keeps for itself.
 *
 * @param number among the games of that club; a later one may get it once the game is taken back
 */
public record KeptGame(int number, PastGame game) {}
