package tiewright.rating;

import java.util.OptionalDouble;

/**
 * What somebody states of the assumptions behind ratings. What is not stated is estimated from the games, or the usual.
 *
 * @param formSpread standard deviation of the forms of players, in rallies per 100; {@code extraSpread} that of what pairs have
 *     beyond them
 * @param drift by how much a form may have moved after a year: its standard deviation; after n years that times the root of n
 * @param shared standard deviation of what the games of one rubber share beside the strengths, the day of a pair say
 */
public record Stated(
        ServeRates serving,
        OptionalDouble formSpread,
        OptionalDouble extraSpread,
        OptionalDouble drift,
        OptionalDouble shared) {
    /** Of more than this nobody has ever heard. */
    public static final double MOST = 50;

    public Stated {
        for (OptionalDouble one : new OptionalDouble[] {formSpread, extraSpread, drift, shared}) {
            if (one.isPresent() && !(one.getAsDouble() >= 0 && one.getAsDouble() <= MOST)) {
                throw new IllegalArgumentException("a spread is 0 to " + MOST + ", not " + one.getAsDouble());
            }
        }
    }

    boolean hasSpreads() {
        return formSpread.isPresent() && extraSpread.isPresent();
    }

    public static Stated nothing() {
        OptionalDouble open = OptionalDouble.empty();
        return new Stated(ServeRates.USUAL, open, open, open, open);
    }

    /** Everything as simple as it can be, for sums with a pencil: forms spread by 6, extras by 3, nothing drifts, nothing is shared. */
    public static Stated plain() {
        return new Stated(
                ServeRates.PLAIN,
                OptionalDouble.of(6),
                OptionalDouble.of(3),
                OptionalDouble.of(0),
                OptionalDouble.of(0));
    }
}
