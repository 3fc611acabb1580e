package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Tries every plan that ends by a given moment, as long as that takes few steps. */
final class ExactSearch {
    /** A fraction of a second. */
    static final long USUAL_STEPS = 400_000;

    /** With more to place than this, trying everything takes too long. */
    static final int FEW = 10;

    /** What a search for any plan at all gives. */
    enum End {
        /** there is one */
        FOUND,
        /** everything was tried: there is none */
        NONE,
        /** the steps were not enough */
        UNKNOWN
    }

    private final Board board;
    private final List<Piece> order;
    private final List<List<Spot>> choices = new ArrayList<>();
    private final @Nullable Spot[] spots;
    private long steps;

    private ExactSearch(Board board, int end, long steps) {
        this.board = board;
        this.steps = steps;
        this.spots = new Spot[board.pieces().size()];
        this.order = new ArrayList<>();
        for (Piece piece : board.pieces()) {
            piece.pin().ifPresentOrElse(pin -> spots[piece.number()] = board.pinned(pin), () -> order.add(piece));
        }
        order.sort(Comparator.comparing((Piece piece) -> board.tie(piece).stage())
                .thenComparing(piece -> board.tie(piece).round()));
        for (Piece piece : order) {
            List<Spot> all = new ArrayList<>();
            for (int slot = 0; board.base() + slot * board.slot() + piece.minutes() <= end; slot++) {
                all.addAll(board.spots(slot, piece.width(), piece.minutes()));
            }
            choices.add(all);
        }
    }

    /**
     * Is there a plan that keeps everything, umpires apart, and ends by this minute of the day? Courts are taken in the groups
     * that the search by steps uses too, see {@link Board#spots}.
     */
    static End plan(Board board, int end, long steps) {
        ExactSearch search = new ExactSearch(board, end, steps);
        if (search.place(0)) {
            return End.FOUND;
        }
        return search.steps > 0 ? End.NONE : End.UNKNOWN;
    }

    private boolean place(int depth) {
        if (depth == order.size()) {
            return true;
        }
        Piece piece = order.get(depth);
        for (Spot spot : choices.get(depth)) {
            if (--steps <= 0) {
                return false;
            }
            if (fits(piece, spot)) {
                spots[piece.number()] = spot;
                if (place(depth + 1)) {
                    return true;
                }
                spots[piece.number()] = null;
            }
        }
        return false;
    }

    private boolean fits(Piece piece, Spot spot) {
        if (spot.start() < board.ready(piece.number())) {
            return false;
        }
        for (Spot other : spots) {
            if (other != null && other.isSharedWith(spot)) {
                return false;
            }
        }
        for (Link link : board.linksOf(piece.number())) {
            boolean first = link.a() == piece.number();
            Spot other = spots[first ? link.b() : link.a()];
            if (other != null
                    && Rules.isBroken(link.kind(), first ? spot : other, first ? other : spot, board.rest())) {
                return false;
            }
        }
        return true;
    }
}
