package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A first plan, slot by slot: whatever may begin, begins, in a given order of priority, then clubs that have waited longest. It
 * breaks nothing but may end late or be uncomfortable; the search begins from the best of several, see {@link Starts}.
 */
final class Packing {
    private final Board board;
    private final double[] priority;
    private final @Nullable Spot[] spots;
    private final List<Piece> open = new ArrayList<>();

    /** What still takes a court in the slot that is filled, or later: nothing else can be in the way. */
    private final List<Spot> inTheWay = new ArrayList<>();

    private Packing(Board board, double[] priority) {
        this.board = board;
        this.priority = priority;
        this.spots = new Spot[board.pieces().size()];
        for (Piece piece : board.pieces()) {
            piece.pin().ifPresentOrElse(pin -> put(piece, board.pinned(pin)), () -> open.add(piece));
        }
        open.sort(Comparator.comparingDouble(piece -> priority[piece.number()]));
    }

    /**
     * A spot for each piece; empty where the courts never open long enough, or something waits for ever.
     *
     * @param priority by number of the piece, the smallest first
     */
    static Optional<Spot[]> of(Board board, double[] priority) {
        Packing packing = new Packing(board, priority);
        for (int slot = 0; slot < CourtTime.MOST_SLOTS && !packing.open.isEmpty(); slot++) {
            packing.fill(slot);
        }
        return packing.open.isEmpty() ? Optional.of(packing.spots) : Optional.empty();
    }

    private void fill(int slot) {
        List<Piece> waiting = new ArrayList<>(open);
        int start = board.base() + slot * board.slot();
        inTheWay.removeIf(spot -> spot.end() <= start);
        waiting.sort(Comparator.comparingDouble((Piece piece) -> priority[piece.number()])
                .thenComparing(piece -> lastEnd(piece, start)));
        for (Piece piece : waiting) {
            if (spots[piece.number()] == null) {
                place(together(piece), slot);
            }
        }
        open.removeIf(piece -> spots[piece.number()] != null);
    }

    /** When the later of its clubs came off court. */
    private int lastEnd(Piece piece, int start) {
        return board.linksOf(piece.number()).stream()
                .filter(link -> link.kind() == Link.Kind.CLUB)
                .map(link -> spots[link.a() == piece.number() ? link.b() : link.a()])
                .filter(spot -> spot != null && spot.end() <= start)
                .mapToInt(Spot::end)
                .max()
                .orElse(0);
    }

    /** The piece and all that must begin with it and have no place yet. */
    private List<Piece> together(Piece piece) {
        List<Piece> group = new ArrayList<>(List.of(piece));
        for (Link link : board.linksOf(piece.number())) {
            int other = link.a() == piece.number() ? link.b() : link.a();
            if (link.kind() == Link.Kind.TOGETHER && spots[other] == null) {
                group.add(board.pieces().get(other));
            }
        }
        return group;
    }

    private void place(List<Piece> group, int slot) {
        for (int i = 0; i < group.size(); i++) {
            Piece piece = group.get(i);
            Optional<Spot> spot = board.spots(slot, piece.width(), piece.minutes()).stream()
                    .filter(candidate -> isFree(candidate) && mayStand(piece, candidate))
                    .min(Comparator.comparingLong(candidate -> sameCourts(piece, candidate)));
            if (spot.isEmpty()) {
                group.subList(0, i).forEach(this::takeBack);
                return;
            }
            put(piece, spot.get());
        }
    }

    private void put(Piece piece, Spot spot) {
        spots[piece.number()] = spot;
        inTheWay.add(spot);
    }

    private void takeBack(Piece piece) {
        inTheWay.remove(spots[piece.number()]);
        spots[piece.number()] = null;
    }

    private boolean isFree(Spot candidate) {
        int beside = 0;
        for (Spot spot : inTheWay) {
            if (spot.isSharedWith(candidate)) {
                return false;
            }
            beside += spot.meets(candidate) ? 1 : 0;
        }
        return !board.problem().umpires() || 3 * (beside + 1) <= board.clubs().size();
    }

    private boolean mayStand(Piece piece, Spot candidate) {
        if (candidate.start() < board.ready(piece.number())) {
            return false;
        }
        for (Link link : board.linksOf(piece.number())) {
            boolean first = link.a() == piece.number();
            Spot other = spots[first ? link.b() : link.a()];
            if (other == null) {
                if (!first
                        && link.kind() != Link.Kind.CLUB
                        && link.kind() != Link.Kind.PLAYERS
                        && link.kind() != Link.Kind.TOGETHER) {
                    return false; // what comes before it has no place yet
                }
            } else if (Rules.isBroken(
                    link.kind(), first ? candidate : other, first ? other : candidate, board.rest())) {
                return false;
            }
        }
        return true;
    }

    private long sameCourts(Piece piece, Spot candidate) {
        return board.linksOf(piece.number()).stream()
                .filter(link -> link.kind() == Link.Kind.CLUB)
                .map(link -> spots[link.a() == piece.number() ? link.b() : link.a()])
                .filter(spot -> spot != null && (spot.courts() & candidate.courts()) != 0)
                .count();
    }
}
