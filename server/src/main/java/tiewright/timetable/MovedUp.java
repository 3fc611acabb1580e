package tiewright.timetable;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Rubbers that are planned one by one move up to courts that stand empty while their tie is on: nobody gains by a tie that is split
 * over more starts than the courts ask for. What was published, pinned or forbidden stays as it is.
 */
final class MovedUp {
    private final Board board;
    private final int[] duties;
    private Spot[] spots;

    private MovedUp(Board board, Spot[] spots, int[] duties) {
        this.board = board;
        this.duties = duties;
        this.spots = spots;
    }

    /** The same plan but for these rubbers; it ends no later and breaks no more. */
    static Spot[] of(Board board, Spot[] spots, int[] duties) {
        MovedUp moved = new MovedUp(board, spots.clone(), duties);
        board.pieces().stream().filter(moved::isFree).forEach(moved::moveUp);
        return moved.spots;
    }

    private boolean isFree(Piece piece) {
        return piece.pin().isEmpty()
                && !board.problem()
                        .notBefore()
                        .published()
                        .containsKey(board.tie(piece).id());
    }

    private void moveUp(Piece piece) {
        int first = board.pieces().stream()
                .filter(other -> other.tie() == piece.tie())
                .mapToInt(other -> spots[other.number()].start())
                .min()
                .orElseThrow();
        Spot now = spots[piece.number()];
        IntStream.range(Math.max(0, Math.floorDiv(first - board.base(), board.slot())), now.slot())
                .mapToObj(slot -> board.spots(slot, piece.width(), piece.minutes()))
                .flatMap(List::stream)
                .filter(earlier -> earlier.start() >= first)
                .map(earlier -> with(piece, earlier))
                .filter(moved -> breaches(moved) <= breaches(spots))
                .findFirst()
                .ifPresent(moved -> spots = moved);
    }

    private Spot[] with(Piece piece, Spot spot) {
        Spot[] moved = spots.clone();
        moved[piece.number()] = spot;
        return moved;
    }

    private long breaches(Spot[] of) {
        return Judge.of(board, of, duties).score().breaches();
    }
}
