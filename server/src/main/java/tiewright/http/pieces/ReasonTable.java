package tiewright.http.pieces;

import java.util.List;

/**
 * A table whose rows can say why; the first column stays in sight while the rest scrolls.
 *
 * @param id unique on the page; an opened reason stays open when the table is renewed
 * @param foot a line under the table: what is provisional, what the columns count
 */
public record ReasonTable(String id, String caption, List<Column> columns, List<Row> rows, String foot) {

    public ReasonTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** A column; numbers are set to the right. */
    public record Column(String heading, boolean number) {}

    /** One cell; {@code href} empty for no link. */
    public record Cell(String text, String href) {
        public static Cell of(String text) {
            return new Cell(text, "");
        }
    }

    /**
     * One row, as many cells as columns.
     *
     * @param why the words to press for the reason ("Why 2nd"), empty for none
     * @param lineBelow a double rule under it (who goes through)
     */
    public record Row(List<Cell> cells, String why, List<String> reasons, boolean lineBelow) {

        public Row {
            cells = List.copyOf(cells);
            reasons = List.copyOf(reasons);
        }

        public static Row of(List<Cell> cells) {
            return new Row(cells, "", List.of(), false);
        }
    }
}
