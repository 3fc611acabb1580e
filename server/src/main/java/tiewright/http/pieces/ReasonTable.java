package tiewright.http.pieces;

import java.util.List;

/**
 * A table whose rows can say why; the first column stays in sight while the rest scrolls.
 *
 * @param id unique on the page; an opened reason stays open when the table is renewed
 * @param foot a line under the table: what is provisional, what the columns count
 */
public record ReasonTable(String id, String caption, List<Column> columns, List<Row> rows, String foot) {
    // how wide columns come out and what a phone of 390 px has for them, in letters; measured on our own pages
    private static final int FIRST = 10;
    private static final int WORDS = 13;
    private static final int NUMBER = 8;
    private static final int PHONE = 42;
    private static final int SHORT_NAME = 8;

    public ReasonTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** A row that says why opens by a press anywhere on it. */
    public boolean hasReasons() {
        return rows.stream().anyMatch(row -> !row.why().isEmpty());
    }

    /** Squares of a pool's ties: on a phone they stand below the name. */
    public boolean hasMarks() {
        return rows.stream()
                .flatMap(row -> row.cells().stream())
                .anyMatch(cell -> !cell.marks().isEmpty());
    }

    /** A phone has no room for it: there each row is a block, with the heading before each figure. */
    public boolean isWide() {
        int others = columns.stream()
                .skip(1)
                .mapToInt(column -> column.number() ? NUMBER : WORDS)
                .sum();
        return !hasMarks() && FIRST + others > PHONE;
    }

    /** How its rows are drawn, on a phone and beyond. */
    public String css() {
        String base = hasReasons() ? "reasons" : "plain";
        boolean beside = rows.stream().allMatch(row -> row.cells().get(0).text().length() <= SHORT_NAME);
        return base + (isWide() ? beside ? " stacks beside" : " stacks" : "");
    }

    /** A column; numbers are set to the right. */
    public record Column(String heading, boolean number) {}

    /**
     * One cell.
     *
     * @param href empty for no link
     * @param marks squares in place of words; their own words say the same
     */
    public record Cell(String text, String href, List<DayLine.Rubber> marks) {
        public Cell {
            marks = List.copyOf(marks);
        }

        public Cell(String text, String href) {
            this(text, href, List.of());
        }

        public boolean isEmpty() {
            return text.isEmpty() && marks.isEmpty();
        }

        public static Cell ofMarks(List<DayLine.Rubber> marks) {
            return new Cell("", "", marks);
        }

        public static Cell of(String text) {
            return new Cell(text, "");
        }
    }

    /**
     * One row, as many cells as columns.
     *
     * @param why the words to press for the reason ("Why 2nd"), empty for none
     * @param lineBelow what the double rule under it says (who goes through); empty for no rule
     */
    public record Row(List<Cell> cells, String why, List<String> reasons, String lineBelow) {

        public Row {
            cells = List.copyOf(cells);
            reasons = List.copyOf(reasons);
        }

        public static Row of(List<Cell> cells) {
            return new Row(cells, "", List.of(), "");
        }
    }
}
