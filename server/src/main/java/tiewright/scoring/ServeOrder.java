package tiewright.scoring;

/**
 * Who serves next and who can score: the rule behind {@link GameState} and {@link Chain}.
 *
 * <p>The turns go round: in side-out doubles side one's first and second server, then side two's; in rally scoring one turn a
 * side. A server who loses the rally hands over to the next turn, whatever the format.
 */
final class ServeOrder {
    private final Format format;
    private final int serversPerSide;

    /** @param serversPerSide 2 in side-out doubles; 1 in side-out singles and in rally scoring */
    ServeOrder(Format format, int serversPerSide) {
        this.format = format;
        this.serversPerSide = serversPerSide;
    }

    static ServeOrder doubles(Format format) {
        return new ServeOrder(format, format.kind() == Format.Kind.SIDE_OUT ? 2 : 1);
    }

    int turns() {
        return 2 * serversPerSide;
    }

    /** The turn a game begins with: the last server of the side that serves first (0-0-2 in side-out doubles). */
    int start(SideNo first) {
        return turn(first, serversPerSide);
    }

    int turn(SideNo side, int server) {
        return side.ordinal() * serversPerSide + server - 1;
    }

    SideNo side(int turn) {
        return servesOne(turn) ? SideNo.ONE : SideNo.TWO;
    }

    boolean servesOne(int turn) {
        return turn < serversPerSide;
    }

    int server(int turn) {
        return turn % serversPerSide + 1;
    }

    int next(int turn) {
        return turn + 1 == turns() ? 0 : turn + 1;
    }

    /** Does the receiving side get a point when it wins this rally? */
    boolean receiverScores(int one, int two, int turn) {
        if (format.kind() == Format.Kind.SIDE_OUT) {
            return false;
        }
        return !format.serveLast() || !(servesOne(turn) ? format.isOver(one, two + 1) : format.isOver(one + 1, two));
    }
}
