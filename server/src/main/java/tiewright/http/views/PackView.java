package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.Qr;
import tiewright.http.pieces.SheetView;

/**
 * Papers to print in one go.
 *
 * @param words what to do with them, on the screen alone
 */
public record PackView(String words, List<Leaf> leaves) {
    public PackView {
        leaves = List.copyOf(leaves);
    }

    /**
     * What begins on a sheet of paper of its own.
     *
     * @param slips links that were made with it, to cut out
     * @param sheets to name pairs on, each with places to sign
     */
    public record Leaf(
            String title,
            List<String> lines,
            List<LinksMadeView.Slip> slips,
            List<Grid> grids,
            List<SheetView> sheets,
            List<Numbered> cards,
            List<ConditionsView.Group> rules) {
        public Leaf {
            lines = List.copyOf(lines);
            slips = List.copyOf(slips);
            grids = List.copyOf(grids);
            sheets = List.copyOf(sheets);
            cards = List.copyOf(cards);
            rules = List.copyOf(rules);
        }

        public static Leaf of(String title, String... lines) {
            return new Leaf(title, List.of(lines), List.of(), List.of(), List.of(), List.of(), List.of());
        }

        public Leaf withSlips(List<LinksMadeView.Slip> made) {
            return new Leaf(title, lines, made, grids, sheets, cards, rules);
        }

        public Leaf withGrids(List<Grid> shown) {
            return new Leaf(title, lines, slips, shown, sheets, cards, rules);
        }

        public Leaf withSheets(List<SheetView> blank) {
            return new Leaf(title, lines, slips, grids, blank, cards, rules);
        }

        public Leaf withCards(List<Numbered> numbered) {
            return new Leaf(title, lines, slips, grids, sheets, numbered, rules);
        }

        public Leaf withRules(List<ConditionsView.Group> groups) {
            return new Leaf(title, lines, slips, grids, sheets, cards, groups);
        }

        /** Whether there is anything on it beside its title. */
        public boolean holdsAnything() {
            return !(slips.isEmpty() && grids.isEmpty() && sheets.isEmpty() && cards.isEmpty() && rules.isEmpty());
        }
    }

    /**
     * A table in letters that are read at arm's length.
     *
     * @param id unique on the page
     */
    public record Grid(String id, String caption, List<String> heads, List<Row> rows) {
        private static final int ROWS_OF_HALF_A_SHEET = 14;

        public Grid {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }

        /** It would leave much of a sheet empty if it were kept together. */
        public boolean isLong() {
            return rows.size() > ROWS_OF_HALF_A_SHEET;
        }
    }

    /**
     * As many cells as heads; an empty one is left to a pencil.
     *
     * @param below a line of its own under the row, such as the reason of a place; may be empty
     */
    public record Row(List<String> cells, String below) {
        public Row {
            cells = List.copyOf(cells);
        }

        public static Row of(String... cells) {
            return new Row(List.of(cells), "");
        }
    }

    /**
     * A card with its number.
     *
     * @param form where a phone enters it
     */
    public record Numbered(String number, CardView card, Qr form) {}
}
