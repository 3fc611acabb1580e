package tiewright.http.pieces;

import java.util.List;

/**
 * The order of play as it hangs on the wall: courts across, starts down, a tie in each place with both clubs.
 *
 * @param courts their names, headings of the columns
 */
public record WallTable(String id, String caption, List<String> courts, List<Row> rows) {
    private static final int FEW_COURTS = 8;
    private static final int FEW_ROWS = 9;

    public WallTable {
        courts = List.copyOf(courts);
        rows = List.copyOf(rows);
    }

    /** How small it must be printed. */
    public String css() {
        return courts.size() > FEW_COURTS || rows.size() > FEW_ROWS ? "wall wall-small" : "wall";
    }

    /**
     * All that begins at one time; as many places as courts, none in a free one.
     *
     * @param now the line that says what time it is, above this row; empty where it is elsewhere
     */
    public record Row(String time, String stage, String now, List<List<Entry>> places) {
        public Row {
            places = List.copyOf(places);
        }
    }

    /**
     * A tie.
     *
     * @param css {@code own} for the reader's club, {@code on} while it is played; may be empty
     * @param foot when it is likely to begin, or another word; may be empty
     */
    public record Entry(Club home, Club away, State state, String foot, String href, String css) {}

    /** @param score rubbers won, empty before play */
    public record Club(String name, String score, boolean won) {}
}
