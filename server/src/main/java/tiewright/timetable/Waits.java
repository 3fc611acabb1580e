package tiewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import tiewright.event.ClubId;

/** How the clubs of a plan wait and rest between their ties. */
final class Waits {
    private static final int NONE = -1;

    private final Board board;
    private final int[] start;
    private final int[] end;
    private final int[][] order;

    /** @param spots by number of the piece; null where a piece has no place */
    private Waits(Board board, Spot[] spots) {
        this.board = board;
        int ties = board.problem().ties().size();
        this.start = new int[ties];
        this.end = new int[ties];
        Arrays.fill(start, NONE);
        for (Piece piece : board.pieces()) {
            Spot spot = spots[piece.number()];
            if (spot != null) {
                int tie = piece.tie();
                start[tie] = start[tie] == NONE ? spot.start() : Math.min(start[tie], spot.start());
                end[tie] = Math.max(end[tie], spot.end());
            }
        }
        this.order = new int[board.clubs().size()][];
        for (int club = 0; club < order.length; club++) {
            order[club] = sorted(board.tiesOf(club));
        }
    }

    static Waits of(Board board, Spot[] spots) {
        return new Waits(board, spots);
    }

    /** All pieces of one plan, in any order. */
    static Waits of(Collection<PlacedPiece> placed) {
        Board board = placed.iterator().next().board();
        Spot[] spots = new Spot[board.pieces().size()];
        placed.forEach(piece -> spots[piece.number()] = piece.spot());
        return new Waits(board, spots);
    }

    static Waits of(Plan plan) {
        Board board = new Board(plan.problem());
        return new Waits(board, Placing.spots(board, plan.assignments()));
    }

    /** The ties of a club that have their place, by start: an insertion sort, for there are few. */
    private int[] sorted(int[] ties) {
        int[] sorted = new int[ties.length];
        int count = 0;
        for (int tie : ties) {
            if (start[tie] != NONE) {
                int at = count++;
                while (at > 0 && start[sorted[at - 1]] > start[tie]) {
                    sorted[at] = sorted[at - 1];
                    at--;
                }
                sorted[at] = tie;
            }
        }
        return count == ties.length ? sorted : Arrays.copyOf(sorted, count);
    }

    /** The waits of a club between its ties, in minutes. */
    private List<Integer> gaps(int club) {
        List<Integer> gaps = new ArrayList<>();
        for (int i = 1; i < order[club].length; i++) {
            gaps.add(gap(club, i));
        }
        return gaps;
    }

    private int gap(int club, int i) {
        return Math.max(0, start[order[club][i]] - end[order[club][i - 1]]);
    }

    private int longest(int club) {
        int longest = 0;
        for (int i = 1; i < order[club].length; i++) {
            longest = Math.max(longest, gap(club, i));
        }
        return longest;
    }

    int longest(ClubId club) {
        int number = board.clubNumber(club);
        return number < 0
                ? 0
                : gaps(number).stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    /** {@link Part#WAIT}. */
    long squares() {
        long sum = 0;
        for (int club = 0; club < order.length; club++) {
            long slots = longest(club) / board.slot();
            sum += slots * slots;
        }
        return sum;
    }

    /** {@link Part#BACK_TO_BACK}. */
    long backToBacks() {
        long count = 0;
        for (int club = 0; club < order.length; club++) {
            for (int i = 1; i < order[club].length; i++) {
                count += gap(club, i) < board.slot() ? 1 : 0;
            }
        }
        return count;
    }

    /** {@link Part#UNEQUAL_REST}. */
    long unequalRest() {
        int[] first = new int[start.length];
        Arrays.fill(first, NONE);
        long sum = 0;
        for (int club = 0; club < order.length; club++) {
            for (int i = 1; i < order[club].length; i++) {
                int tie = order[club][i];
                int rest = gap(club, i);
                if (first[tie] == NONE) {
                    first[tie] = rest;
                } else {
                    sum += Math.abs(first[tie] - rest);
                }
            }
        }
        return sum;
    }
}
