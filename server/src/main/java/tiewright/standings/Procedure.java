package tiewright.standings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A level-teams procedure, ready to be followed: which criterion comes next for a group of level clubs.
 *
 * <p>Two entries of the list are rules rather than criteria. <em>Two left: head-to-head</em> holds from its place in the
 * list on: whenever a group has just two clubs, first now or after others were separated, the tie between them comes
 * before the rest of the list. <em>Restart</em> holds for the entries before it (for all, where none stands before it):
 * when one of those has separated some clubs, those still level start again at the top.
 */
public final class Procedure {
    /** The four named procedures as lists; what each means is printed in the conditions of play. */
    private static final Map<String, String> NAMED = Map.of(
            "overall-difference", "two-left-head-to-head>rubbers-difference>games-difference>points-difference>lots",
            "among-level-ratio", "head-to-head>rubbers-ratio-among>games-ratio-among>points-ratio-among>restart>lots",
            "head-to-head-points", "ties-won-among>points-difference>lots",
            "rubbers-won", "rubbers-won>head-to-head>games-difference>points-difference>lots");

    /** An entry of the list. */
    enum Kind {
        CRITERION,
        TWO_LEFT_HEAD_TO_HEAD,
        RESTART,
        LOTS
    }

    record Entry(Kind kind, Optional<Criterion> criterion) {
        static Optional<Entry> parse(String word) {
            return switch (word) {
                case "two-left-head-to-head" -> Optional.of(new Entry(Kind.TWO_LEFT_HEAD_TO_HEAD, Optional.empty()));
                case "restart" -> Optional.of(new Entry(Kind.RESTART, Optional.empty()));
                case "lots" -> Optional.of(new Entry(Kind.LOTS, Optional.empty()));
                default -> Criterion.parse(word).map(criterion -> new Entry(Kind.CRITERION, Optional.of(criterion)));
            };
        }
    }

    /** How far a group has come: the next entry, and whether its last two clubs have been asked about their tie. */
    record At(int next, boolean askedTheTwo) {
        static final At START = new At(0, false);
    }

    /** What to do now: compare by the criterion, or, if there is none, draw lots. */
    record Move(Optional<Criterion> criterion, At ifStillLevel, At ifSeparated) {}

    /** What every table begins with, before the list. */
    static final Move TIE_POINTS = new Move(Optional.of(Criterion.TIE_POINTS), At.START, At.START);

    private final List<Entry> entries;

    private Procedure(List<Entry> entries) {
        this.entries = entries;
    }

    /**
     * Reads one of the four names or a list of steps joined by {@code >}, as the setting {@code level_teams} holds it; empty
     * when the text is neither. A list without {@code lots} ends as if it had it.
     */
    public static Optional<Procedure> parse(String levelTeams) {
        List<Entry> entries = new ArrayList<>();
        for (String word : NAMED.getOrDefault(levelTeams, levelTeams).split(">", -1)) {
            Optional<Entry> entry = Entry.parse(word);
            if (entry.isEmpty()) {
                return Optional.empty();
            }
            entries.add(entry.get());
        }
        return Optional.of(new Procedure(List.copyOf(entries)));
    }

    Move move(int clubsLevel, At at) {
        if (clubsLevel == 2 && !at.askedTheTwo() && twoLeftInForce(at.next())) {
            return new Move(Optional.of(Criterion.HEAD_TO_HEAD), new At(at.next(), true), at);
        }
        if (at.next() >= entries.size()) {
            return new Move(Optional.empty(), at, at);
        }
        Entry entry = entries.get(at.next());
        At after = new At(at.next() + 1, at.askedTheTwo());
        return switch (entry.kind()) {
            case LOTS -> new Move(Optional.empty(), at, at);
            case RESTART, TWO_LEFT_HEAD_TO_HEAD -> move(clubsLevel, after);
            case CRITERION ->
                new Move(entry.criterion(), after, restarts(at.next()) ? At.START : new At(at.next() + 1, false));
        };
    }

    private boolean twoLeftInForce(int next) {
        int place = indexOf(Kind.TWO_LEFT_HEAD_TO_HEAD, 0);
        return place >= 0 && place <= next;
    }

    private boolean restarts(int place) {
        int first = indexOf(Kind.RESTART, 0);
        return first == 0 || indexOf(Kind.RESTART, place) >= 0;
    }

    private int indexOf(Kind kind, int from) {
        for (int i = from; i < entries.size(); i++) {
            if (entries.get(i).kind() == kind) {
                return i;
            }
        }
        return -1;
    }
}
