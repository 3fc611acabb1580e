package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.scoring.Format;

/** How a game can be made shorter, and what that saves. */
final class Shortening {
    private Shortening() {}

    /** The same game to fewer points, of those that are usual (USA Pickleball rulebook 2025, 12.B.1.a has 7 for bad weather), most points first. */
    static List<Format> targets(Format format) {
        return Stream.of(21, 15, 11, 7)
                .filter(points -> points < format.target())
                .map(points -> to(format, points))
                .toList();
    }

    private static Format to(Format format, int points) {
        OptionalInt cap = format.cap().isPresent()
                ? OptionalInt.of(points + format.cap().getAsInt() - format.target())
                : OptionalInt.empty();
        return new Format(format.kind(), points, format.byOne(), cap, format.serveLast());
    }

    /** Every rally a point, to the next usual number of points: 11 becomes 15, 15 becomes 21. Empty where it is so already. */
    static Optional<Format> asRally(Format format) {
        if (format.kind() == Format.Kind.RALLY) {
            return Optional.empty();
        }
        int points = Stream.of(11, 15, 21)
                .filter(more -> more > format.target())
                .findFirst()
                .orElse(21);
        return Optional.of(Format.rally(points));
    }

    /** A slot in which the play takes this share of what it took, to the nearest minute, and the turnover as long as before. */
    static int slot(int minutes, int turnover, double share) {
        int play = Math.max(1, minutes - turnover);
        return (int) Math.max(1, Math.round(play * share)) + Math.min(turnover, minutes - play);
    }
}
