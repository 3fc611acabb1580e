package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;

/** From spots to a plan that people read, and back. */
final class Placing {
    /** No club is on duty. */
    static final int NOBODY = -1;

    private Placing() {}

    static int[] nobody(Board board) {
        int[] duties = new int[board.pieces().size()];
        java.util.Arrays.fill(duties, NOBODY);
        return duties;
    }

    /** @param duties number of the club that umpires each piece, or {@link #NOBODY} */
    static Plan plan(Board board, Spot[] spots, int[] duties, long seed) {
        Judge judge = Judge.of(board, spots, duties);
        List<Assignment> assignments = new ArrayList<>();
        for (Piece piece : board.pieces()) {
            assignments.add(assignment(board, piece, spots[piece.number()], duties[piece.number()]));
        }
        assignments.sort(Comparator.comparing(Assignment::slot)
                .thenComparing(Assignment::start)
                .thenComparing(
                        assignment -> board.courtNumber(assignment.courts().get(0))));
        return new Plan(
                board.problem(), assignments, judge.score(), judge.breaches(), Bounds.of(board), seed, List.of());
    }

    private static Assignment assignment(Board board, Piece piece, Spot spot, int duty) {
        Optional<ClubId> umpires =
                duty == NOBODY ? Optional.empty() : Optional.of(board.clubs().get(duty));
        List<String> courts = piece.pin().map(Pin::courts).orElseGet(() -> board.courtNames(spot));
        return new Assignment(
                board.tie(piece).id(),
                piece.rubbers(),
                Math.max(0, spot.slot() + 1),
                courts,
                Clock.time(spot.start()),
                Clock.time(spot.end()),
                piece.pin().map(Pin::why),
                umpires);
    }

    /** Who umpires each piece. */
    static int[] duties(Board board, List<Assignment> assignments) {
        int[] duties = new int[board.pieces().size()];
        for (Piece piece : board.pieces()) {
            duties[piece.number()] = assignments.stream()
                    .filter(a ->
                            a.tie().equals(board.tie(piece).id()) && a.rubbers().equals(piece.rubbers()))
                    .flatMap(a -> a.umpires().stream())
                    .findFirst()
                    .map(board::clubNumber)
                    .orElse(NOBODY);
        }
        return duties;
    }

    /** The spots of the pieces of a board, as a plan made from it has them. */
    static Spot[] spots(Board board, List<Assignment> assignments) {
        Spot[] spots = new Spot[board.pieces().size()];
        for (Piece piece : board.pieces()) {
            assignments.stream()
                    .filter(a ->
                            a.tie().equals(board.tie(piece).id()) && a.rubbers().equals(piece.rubbers()))
                    .findFirst()
                    .ifPresent(a -> spots[piece.number()] = board.spot(a));
        }
        return spots;
    }
}
