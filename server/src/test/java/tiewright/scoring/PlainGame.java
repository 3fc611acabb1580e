package tiewright.scoring;

import java.util.List;
import java.util.stream.Stream;

/**
 * A second telling of the rules, for tests only, sharing nothing with the room but {@link Format}'s components: the rules as they are
 * played, point after point.
 *
 * @param side 1 or 2, who serves
 * @param server 1 or 2
 * @param ended the last point ended the game
 */
record PlainGame(Format format, int one, int two, int side, int server, boolean ended) {
    static PlainGame start(Format format, int first) {
        return new PlainGame(format, 0, 0, first, format.kind() == Format.Kind.SIDE_OUT ? 2 : 1, false);
    }

    PlainGame rallyTo(int winner) {
        if (format.kind() == Format.Kind.SIDE_OUT) {
            if (winner == side) {
                return point(winner, side, server);
            }
            return server == 1
                    ? new PlainGame(format, one, two, side, 2, false)
                    : new PlainGame(format, one, two, 3 - side, 1, false);
        }
        PlainGame scored = point(winner, winner, 1);
        boolean needsServe = format.serveLast() && scored.ended && winner != side;
        return needsServe ? new PlainGame(format, one, two, winner, 1, false) : scored;
    }

    private PlainGame point(int winner, int nextSide, int nextServer) {
        int a = one + (winner == 1 ? 1 : 0);
        int b = two + (winner == 2 ? 1 : 0);
        int own = winner == 1 ? a : b;
        int lead = winner == 1 ? a - b : b - a;
        int needed = format.byOne() ? 1 : 2;
        boolean atCap = format.cap().isPresent() && own == format.cap().getAsInt();
        return new PlainGame(format, a, b, nextSide, nextServer, own >= format.target() && lead >= needed || atCap);
    }

    List<PlainGame> both() {
        return Stream.of(rallyTo(1), rallyTo(2)).toList();
    }

    Score score() {
        return new Score(one, two);
    }
}
