package tiewright.http.pieces;

import java.util.List;

/**
 * A table to type in: one row for each thing, a field in each cell.
 *
 * @param columns headings of the typed columns, after the first one
 */
public record InputTable(String id, String caption, String first, List<String> columns, List<Row> rows)
        implements FormField {
    private static final int FIELDS_ON_A_PHONE = 4;

    public InputTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** A phone has no room for it: there each row is a block, with the heading above each field. */
    public boolean isWide() {
        return columns.size() > FIELDS_ON_A_PHONE;
    }

    /**
     * @param label what the row is about
     * @param note a line under the label, empty for none
     */
    public record Row(String label, String note, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** How wide a cell is and what is typed into it. */
    public enum Kind {
        WORDS("text", "cell-words"),
        SHORT("text", "cell-short"),
        NUMBER("numeric", "cell-short"),
        TICK("", ""),
        CHOICE("", "");

        private final String inputMode;
        private final String css;

        Kind(String inputMode, String css) {
            this.inputMode = inputMode;
            this.css = css;
        }

        public String inputMode() {
            return inputMode;
        }

        public String css() {
            return css;
        }
    }

    /**
     * @param id both the id and the name sent with the form
     * @param value what stands there; for a tick {@code yes} or nothing
     * @param options of a choice, the chosen one marked
     */
    public record Cell(String id, Kind kind, String value, String error, List<Option> options) {
        public Cell {
            options = List.copyOf(options);
        }

        public Cell(String id, Kind kind, String value, String error) {
            this(id, kind, value, error, List.of());
        }

        public static Cell choice(String id, String error, List<Option> options) {
            return new Cell(id, Kind.CHOICE, "", error, options);
        }
    }
}
