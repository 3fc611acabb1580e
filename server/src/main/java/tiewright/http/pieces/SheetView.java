package tiewright.http.pieces;

import java.util.List;

/**
 * A sheet: the pairs of one club for one tie. Only a page that may show the names is given rows.
 *
 * @param state sealed, opened, not in
 * @param barLine what the bar adds to the state ("in; opens at 13:05")
 * @param rows one for each rubber in order; empty while the names are not for this reader
 * @param coverWords words to press before the names are shown, empty if they need no cover from neighbours
 */
public record SheetView(String title, State state, String barLine, List<Row> rows, String coverWords) {

    public SheetView {
        rows = List.copyOf(rows);
    }

    /**
     * One rubber; a player without name leaves a line to write on.
     *
     * @param note a line under the names
     */
    public record Row(String label, String first, String second, String note) {}
}
