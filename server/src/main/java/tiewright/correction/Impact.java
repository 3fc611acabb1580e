package tiewright.correction;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tiewright.event.Event;

/**
 * What is different between two snapshots of one event: every thing that people could look at, with its value before and
 * after and how far somebody has gone on from it. By kind, then in the order of the event.
 */
public record Impact(List<Node> nodes) {

    /** What can change, from the score outwards. */
    public enum Kind {
        /** tie, rubber: the score as it counts */
        RUBBER("rubber"),
        /** tie: rubbers won, home-away */
        TIE("tie"),
        /** club: its place in its pool */
        PLACE("place"),
        /** pool, then the clubs of a lot that was drawn and is used */
        LOT("lot"),
        /** pool: the order that was signed, and by whom */
        TABLE("table"),
        /** tie, side: the club that stands there, or that would by the results while nobody stands there yet */
        SLOT("slot"),
        /** tie, club, with D between them for the decider: sealed, opened or ruled */
        SHEET("sheet"),
        /** the same: the fingerprint of the sheet, once it is open */
        RECEIPT("receipt"),
        /** tie, rubber: the court it was called to */
        CALL("call"),
        /** tie: its published start and court */
        TIME("time"),
        /** club, tie of the knockout: the start that the club was told */
        TOLD("told"),
        /** the final order that was signed, and by whom */
        FINAL("final");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** How far somebody has gone on from it. */
    public enum State {
        /** nobody has acted on it */
        PLAIN("plain"),
        /** published, opened, called or signed */
        SEEN("seen"),
        /** a rubber was played on it */
        PLAYED("played");

        private final String code;

        State(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /**
     * One thing that changes.
     *
     * @param subject what it is, as the kind says: ids, rubbers, sides, pools
     * @param before empty = nothing was there
     * @param after empty = nothing will be there
     * @param state by the first of the two snapshots
     */
    public record Node(Kind kind, List<Object> subject, Optional<Object> before, Optional<Object> after, State state) {
        public Node {
            subject = List.copyOf(subject);
        }

        /** The subject on one line, codes apart by blanks. */
        public String subjectText() {
            return subject.stream().map(Object::toString).collect(Collectors.joining(" "));
        }
    }

    public Impact {
        nodes = List.copyOf(nodes);
    }

    public static Impact between(Event before, Event after) {
        Map<Snapshot.Key, Snapshot.Seen> was = Snapshot.of(before);
        Map<Snapshot.Key, Snapshot.Seen> is = Snapshot.of(after);
        Set<Snapshot.Key> keys = new LinkedHashSet<>(was.keySet());
        keys.addAll(is.keySet());
        List<Node> nodes = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            keys.stream().filter(key -> key.kind() == kind).forEach(key -> {
                Optional<Snapshot.Seen> old = Optional.ofNullable(was.get(key));
                Optional<Snapshot.Seen> now = Optional.ofNullable(is.get(key));
                if (!old.map(Snapshot.Seen::value).equals(now.map(Snapshot.Seen::value))) {
                    nodes.add(new Node(
                            kind,
                            key.subject(),
                            old.map(Snapshot.Seen::value),
                            now.map(Snapshot.Seen::value),
                            old.map(Snapshot.Seen::state).orElse(State.PLAIN)));
                }
            });
        }
        return new Impact(nodes);
    }

    public List<Node> of(Kind kind) {
        return nodes.stream().filter(node -> node.kind() == kind).toList();
    }

    /** Somebody has gone on from something else than the tie itself and the table that it counts in. */
    public boolean reachesOthers() {
        return nodes.stream()
                .anyMatch(node -> node.kind().compareTo(Kind.PLACE) > 0 && node.state() != State.PLAIN
                        || node.kind() == Kind.SHEET);
    }

    /** A short text that differs when anything in the list differs: what somebody saw when deciding. */
    public String fingerprint() {
        return Integer.toHexString(nodes.stream()
                .map(node -> node.kind() + node.subjectText() + node.before() + node.after() + node.state())
                .collect(Collectors.joining("\n"))
                .hashCode());
    }
}
