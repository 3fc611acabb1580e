package tiewright.timetable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tiewright.conditions.TiePlay;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/**
 * How early can a day end at best? The largest of: what the courts can take, what one club has to play and rest, and what has to
 * wait for what. Minutes of the day.
 */
final class Bounds {
    /** What could make a bound. */
    enum Cause {
        COURTS("bound-courts"),
        CLUB("bound-club"),
        SOURCES("bound-sources"),
        PUBLISHED("bound-published"),
        PINNED("bound-pinned");

        private final String code;

        Cause(String code) {
            this.code = code;
        }
    }

    /**
     * A bound and what makes it.
     *
     * @param from nothing of what makes it can begin before this minute
     */
    private record End(int minute, Cause cause, int from) {
        End or(int other, Cause why, int head) {
            return other > minute ? new End(other, why, head) : this;
        }
    }

    private final Board board;
    private final CourtTime courts;
    private final Map<TieId, Integer> heads = new HashMap<>();

    private Bounds(Board board) {
        this.board = board;
        this.courts = new CourtTime(board);
    }

    static LowerBound of(Board board) {
        Bounds bounds = new Bounds(board);
        End end = bounds.end(board.pieces());
        int minutes = Math.max(0, end.minute() - board.base());
        return new LowerBound(
                Clock.time(board.base() + minutes),
                Clock.roundedUp(minutes, board.slot()),
                minutes,
                bounds.because(end));
    }

    /** The bound of a day of which everything that ends before this minute was tried. */
    static LowerBound tried(Board board, int end) {
        int minutes = end - board.base();
        return new LowerBound(
                Clock.time(end), Clock.roundedUp(minutes, board.slot()), minutes, Reason.of("bound-tried"));
    }

    private Reason because(End end) {
        List<Piece> free = board.pieces().stream()
                .filter(piece -> piece.pin().isEmpty() && head(piece) >= end.from())
                .toList();
        int rubbers = free.stream().mapToInt(piece -> piece.rubbers().size()).sum();
        int bare = courts.endOfRubbers(rubbers, end.from());
        boolean late = end.cause() == Cause.COURTS && end.from() > board.base();
        boolean sideBySide =
                end.cause() == Cause.COURTS && board.problem().play() == TiePlay.SIDE_BY_SIDE && bare < end.minute();
        Reason because = Reason.of(sideBySide ? "bound-side-by-side" : late ? "bound-courts-from" : end.cause().code)
                .with("from", Clock.time(end.from()))
                .with("rubbers", rubbers)
                .with("courts", board.courts())
                .with("slot", board.slot())
                .with("rest", board.rest());
        return sideBySide
                ? because.with("ties", free.size())
                        .with("width", board.problem().courtsPerTie())
                        .with(
                                "minutes",
                                free.stream().mapToInt(Piece::minutes).max().orElse(0))
                        .with("bare", Clock.time(bare))
                : because;
    }

    /** No earlier end of these pieces. */
    private End end(List<Piece> pieces) {
        End end = new End(board.base(), Cause.COURTS, board.base());
        List<Piece> free =
                pieces.stream().filter(piece -> piece.pin().isEmpty()).toList();
        end = ofPublished(end, free);
        for (int head : heads(free)) {
            end = end.or(
                    courts.end(
                            free.stream().filter(piece -> head(piece) >= head).toList(), head),
                    Cause.COURTS,
                    head);
        }
        for (ClubId club : board.clubs()) {
            end = end.or(ofClub(club, free), Cause.CLUB, board.base());
        }
        for (Piece piece : free) {
            end = end.or(onGrid(head(piece)) + piece.minutes(), Cause.SOURCES, board.base());
        }
        for (Piece piece : pieces) {
            end = end.or(piece.pin().map(pin -> board.pinned(pin).end()).orElse(0), Cause.PINNED, board.base());
        }
        return end;
    }

    private End ofPublished(End before, List<Piece> free) {
        End end = before;
        for (Piece piece : free) {
            PlanTie tie = board.tie(piece);
            if (board.isKeptByItsStart(tie) && board.ready(tie) > board.base()) {
                int start = onGrid(board.ready(tie));
                end = end.or(start + piece.minutes(), Cause.PUBLISHED, start);
            }
        }
        return end;
    }

    private Set<Integer> heads(List<Piece> pieces) {
        return pieces.stream().map(this::head).collect(Collectors.toCollection(TreeSet::new));
    }

    /** A club plays its ties one after the other and rests in between. */
    private int ofClub(ClubId club, List<Piece> free) {
        Map<Integer, Integer> minutes = new HashMap<>();
        Map<Integer, Integer> most = new HashMap<>();
        int first = Board.NEVER;
        for (Piece piece : free) {
            PlanTie tie = board.tie(piece);
            if (tie.clubs().contains(club)) {
                minutes.merge(piece.tie(), piece.minutes(), Integer::sum);
                most.merge(piece.tie(), piece.minutes(), Math::max);
                first = Math.min(first, onGrid(head(piece)));
            }
        }
        int sum = 0;
        int lastSaves = 0;
        for (Map.Entry<Integer, Integer> tie : minutes.entrySet()) {
            int longest = most.getOrDefault(tie.getKey(), 0);
            boolean inTurn = board.tie(tie.getKey()).oneAtATime() || tie.getValue() == longest;
            int length = inTurn ? tie.getValue() : longest;
            int step = Clock.roundedUp(length + board.rest(), board.slot()) * board.slot();
            sum += step;
            lastSaves = Math.max(lastSaves, step - length);
        }
        return minutes.isEmpty() ? 0 : first + sum - lastSaves;
    }

    private int head(Piece piece) {
        return head(board.tie(piece));
    }

    /** No earlier start: its sources must be over, and whoever comes from them must have rested. */
    private int head(PlanTie tie) {
        Integer known = heads.get(tie.id());
        if (known != null) {
            return known;
        }
        heads.put(tie.id(), board.base()); // what waits for itself is told elsewhere
        int head = onGrid(Math.max(board.base(), board.ready(tie)));
        if (!tie.after().isEmpty()) {
            List<Piece> sources = new ArrayList<>(board.pieces());
            sources.removeIf(piece -> !tie.after().contains(board.tie(piece).id()));
            head = sources.isEmpty() ? head : onGrid(end(sources).minute() + board.rest());
        }
        heads.put(tie.id(), head);
        return head;
    }

    private int onGrid(int minute) {
        return board.base() + Clock.roundedUp(minute - board.base(), board.slot()) * board.slot();
    }
}
