package tiewright.http.pieces;

import java.util.List;

/**
 * Courts across, time down, made to fit one sheet of A4.
 *
 * @param caption what it shows, with its version and time
 */
public record Chart(String id, String caption, List<String> courts, List<Row> rows) {
    private static final int FEW_COURTS = 8;
    private static final int FEW_ROWS = 14;
    private static final int MANY_COURTS = 12;
    private static final int MANY_ROWS = 22;

    public Chart {
        courts = List.copyOf(courts);
        rows = List.copyOf(rows);
    }

    /** Everything that begins at one time; as many cells as courts. */
    public record Row(String time, List<List<Entry>> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * What stands on a court.
     *
     * @param clubs in short, such as {@code KS v OL}
     * @param what the tie and rubber
     * @param href empty for no link
     * @param mark a word where it needs one: pinned, changed, over
     */
    public record Entry(String clubs, String what, String href, String mark) {}

    /** How small it must be printed. */
    public String css() {
        if (courts.size() > MANY_COURTS || rows.size() > MANY_ROWS) {
            return "chart chart-dense";
        }
        return courts.size() > FEW_COURTS || rows.size() > FEW_ROWS ? "chart chart-small" : "chart";
    }
}
