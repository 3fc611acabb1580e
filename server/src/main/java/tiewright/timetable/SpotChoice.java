package tiewright.timetable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where each piece may be tried. Pieces of one width and length share a list. */
final class SpotChoice {
    /** Slots after the end of the first plan that are tried as well. */
    private static final int MORE = 1;

    private record Size(int width, int minutes) {}

    private final Board board;
    private final int slots;
    private final Map<Size, List<Spot>> known = new HashMap<>();

    SpotChoice(Board board, Spot[] first) {
        this.board = board;
        int last = 0;
        for (Spot spot : first) {
            last = Math.max(last, Clock.roundedUp(spot.end() - board.base(), board.slot()));
        }
        this.slots = last + MORE;
    }

    List<Spot> of(Piece piece) {
        return piece.pin().isPresent()
                ? List.of(board.pinned(piece.pin().get()))
                : known.computeIfAbsent(new Size(piece.width(), piece.minutes()), this::all);
    }

    private List<Spot> all(Size size) {
        List<Spot> all = new ArrayList<>();
        for (int slot = 0; slot < slots; slot++) {
            all.addAll(board.spots(slot, size.width(), size.minutes()));
        }
        return List.copyOf(all);
    }
}
