package tiewright.lineup;

import java.util.List;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/** What the captain wants of a sheet, whatever it costs. One player or two, by kind. */
public record Wish(Kind kind, List<PlayerId> players) {
    public Wish {
        players = List.copyOf(players);
        if (players.size() != (kind.isOfTwo() ? 2 : 1)) {
            throw new IllegalArgumentException("a wish of the kind " + kind.code() + " cannot name " + players);
        }
    }

    /** The kinds of wishes. */
    public enum Kind {
        /** If one of the two plays a rubber, then with the other; without effect in the decider, and while one of them is absent. */
        TOGETHER("together"),
        /** Never as a pair, in the decider neither, unless that is played by singles in turns. */
        APART("apart"),
        /** In at least one rubber. */
        MUST_PLAY("must-play"),
        /** In no rubber. */
        MUST_REST("must-rest");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }

        boolean isOfTwo() {
            return this == TOGETHER || this == APART;
        }
    }

    public static Wish together(Pair pair) {
        return new Wish(Kind.TOGETHER, pair.players());
    }

    public static Wish apart(Pair pair) {
        return new Wish(Kind.APART, pair.players());
    }

    public static Wish mustPlay(PlayerId player) {
        return new Wish(Kind.MUST_PLAY, List.of(player));
    }

    public static Wish mustRest(PlayerId player) {
        return new Wish(Kind.MUST_REST, List.of(player));
    }
}
