package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;

/** How much the courts can take, slot by slot. */
final class CourtTime {
    /** Longer than any day. */
    static final int MOST_SLOTS = 2_000;

    private final Board board;
    private final List<Integer> open = new ArrayList<>();

    CourtTime(Board board) {
        this.board = board;
    }

    /** Courts free all through a slot, counted from 0. */
    int open(int slot) {
        while (open.size() <= slot) {
            int start = board.base() + open.size() * board.slot();
            open.add(Long.bitCount(board.free(start, start + board.slot())));
        }
        return open.get(slot);
    }

    /**
     * No earlier end of these pieces if none begins before {@code from}: by the area of court time, and by counting. A piece as
     * wide as w and as long as n slots takes one lane of w courts in exactly one of the slots r, r + n, r + 2n, …, whichever r; so no
     * more of them fit than there are lanes in those slots.
     */
    int end(List<Piece> pieces, int from) {
        int first = Clock.roundedUp(from - board.base(), board.slot());
        int end = first + area(pieces, first);
        for (int width : pieces.stream().map(Piece::width).distinct().toList()) {
            for (int slots : pieces.stream().map(this::slots).distinct().toList()) {
                long count = pieces.stream()
                        .filter(piece -> piece.width() >= width && slots(piece) >= slots)
                        .count();
                for (int shift = 0; shift < slots; shift++) {
                    end = Math.max(end, first + counted(count, width, slots, shift, first));
                }
            }
        }
        return pieces.isEmpty() ? from : board.base() + end * board.slot();
    }

    private int slots(Piece piece) {
        return Clock.roundedUp(piece.minutes(), board.slot());
    }

    /** When the courts could have held so many rubbers, none before {@code from}, were each played as soon as a court is free. */
    int endOfRubbers(int rubbers, int from) {
        int first = Clock.roundedUp(from - board.base(), board.slot());
        return board.base() + (first + area(rubbers, first)) * board.slot();
    }

    private int area(List<Piece> pieces, int first) {
        return area(
                pieces.stream()
                        .mapToLong(piece -> (long) piece.width() * slots(piece))
                        .sum(),
                first);
    }

    private int area(long all, int first) {
        long needed = all;
        int slot = 0;
        while (needed > 0 && slot < MOST_SLOTS) {
            needed -= open(first + slot);
            slot++;
        }
        return slot;
    }

    private int counted(long count, int width, int slots, int shift, int first) {
        long missing = count;
        int slot = 0;
        while (missing > 0 && slot < MOST_SLOTS) {
            if (slot % slots == shift) {
                missing -= lanes(first + slot, width);
            }
            slot++;
        }
        return slot;
    }

    private int lanes(int slot, int width) {
        int lanes = open(slot) / width;
        boolean known =
                board.problem().ties().stream().allMatch(tie -> tie.clubs().size() == 2);
        boolean wholeTies = board.pieces().stream().map(Piece::tie).distinct().count()
                == board.pieces().size();
        int busy = board.problem().umpires() ? 3 : 2;
        return known && wholeTies ? Math.min(lanes, Math.max(1, board.clubs().size() / busy)) : lanes;
    }
}
