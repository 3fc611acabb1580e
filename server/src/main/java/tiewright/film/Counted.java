package tiewright.film;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.PlayerId;
import tiewright.scoring.Share;

/**
 * One count of a filmed game.
 *
 * @param subject a player's code, a pair as {@code A+B}, or {@code game}
 * @param outOf how many there could have been; empty where that means nothing
 * @param low lower end of the 95 % interval of the share, a fraction; of points that unsure rallies leave open, the fewest
 * @param high upper end; the most
 */
public record Counted(
        String subject, Measure measure, int value, OptionalInt outOf, OptionalDouble low, OptionalDouble high) {
    /** The player, or the two of a pair; not for the game as a whole. */
    public List<PlayerId> who() {
        return Stream.of(subject.split("\\+")).map(PlayerId::of).toList();
    }

    static Counted plain(String subject, Measure measure, int value) {
        return new Counted(
                subject, measure, value, OptionalInt.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Counted between(String subject, Measure measure, int value, int least, int most) {
        return least == most
                ? plain(subject, measure, value)
                : new Counted(
                        subject,
                        measure,
                        value,
                        OptionalInt.empty(),
                        OptionalDouble.of(least),
                        OptionalDouble.of(most));
    }

    /** Of nothing there is a count and no interval. */
    static Counted share(String subject, Measure measure, int value, int of) {
        if (of == 0) {
            return new Counted(
                    subject, measure, value, OptionalInt.of(0), OptionalDouble.empty(), OptionalDouble.empty());
        }
        Share share = new Share(value, of);
        return new Counted(
                subject,
                measure,
                value,
                OptionalInt.of(of),
                OptionalDouble.of(share.low()),
                OptionalDouble.of(share.high()));
    }
}
