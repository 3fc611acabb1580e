package tiewright.event;

import java.util.OptionalInt;

/**
 * The rubber that an earlier game was part of.
 *
 * @param match what the games of one rubber of a day have in common, any text
 * @param bestOf games in it at most, if that is known
 */
public record OfRubber(String match, OptionalInt bestOf) {
    /** Whoever names a rubber and not of how many games it was the best means one of several. */
    public boolean hasSeveralGames() {
        return bestOf.orElse(3) > 1;
    }
}
