package tiewright.rating;

import tiewright.event.Pair;

/**
 * A pair as it plays.
 *
 * @param together side by side; else in turns, one after the other, where what they have as a pair counts for nothing
 */
public record Rated(Pair pair, boolean together) {
    public static Rated together(Pair pair) {
        return new Rated(pair, true);
    }

    public static Rated inTurns(Pair pair) {
        return new Rated(pair, false);
    }
}
