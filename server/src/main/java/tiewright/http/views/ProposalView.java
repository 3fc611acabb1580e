package tiewright.http.views;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.DoubtBar;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.SelectField;

/**
 * What the tool proposes to one captain, the answer first. For that club's eyes only.
 *
 * @param best the sheet proposed; empty if no sheet grants every wish, and once the sheets are open
 * @param impossible why no sheet grants every wish; empty if one does
 * @param folds what else there is, each with its answer in one line
 * @param cautions whose decision it stays, and what it rests on
 * @param ask what can be asked otherwise; empty once the sheets are open
 * @param forms the form of wishes for this tie
 */
public record ProposalView(
        Refusal refusal,
        Head head,
        Optional<Sheet> best,
        List<String> impossible,
        List<Part> folds,
        List<String> cautions,
        Optional<Ask> ask,
        List<ActionForm> forms) {

    /**
     * @param by which tie, and until when the sheet must be in
     * @param unrated where to rate the squad, while nothing is known of it; empty once something is
     */
    public record Head(String what, String by, Optional<Instant> deadline, Optional<NavLink> unrated) {}

    /** @param use the way to take this sheet into the form */
    public record Sheet(String title, List<Line> lines, DoubtBar chance, List<String> reasons, List<ActionForm> use) {
        /** The chance alone, large. */
        public String large() {
            return chance.words().replaceAll(",.*", "");
        }

        /** Its doubt in words. */
        public String doubt() {
            return chance.counted();
        }
    }

    /**
     * @param ask who is asked before being named; empty for nobody
     * @param range the two ends of the chance in words; empty where there is nothing to doubt
     */
    public record Line(String rubber, String pair, String ask, String chance, String range, Optional<DoubtBar> bar) {}

    /** Lines of one kind, such as "nearly as good": first those that say all in one line, then those that open. */
    public record Part(String heading, List<Row> rows, List<Fold> folds) {
        public Part(String heading, List<Fold> folds) {
            this(heading, List.of(), folds);
        }

        public boolean isEmpty() {
            return rows.isEmpty() && folds.isEmpty();
        }
    }

    /** A question and its answer in one line; {@code detail} may be empty. */
    public record Row(String title, String detail, String answer) {}

    /**
     * What opens under its line.
     *
     * @param answer what it comes to; empty where the title says it
     * @param figure the chance of it, large at the end of the line; empty for none
     */
    public record Fold(
            String title,
            String answer,
            String figure,
            List<String> lines,
            List<Sheet> sheets,
            List<Candidate> candidates,
            Optional<Grid> grid) {
        public static Fold of(String title, String answer, List<String> lines) {
            return new Fold(title, answer, "", lines, List.of(), List.of(), Optional.empty());
        }

        public Fold withFigure(String large) {
            return new Fold(title, answer, large, lines, sheets, candidates, grid);
        }

        public Fold with(List<Sheet> all) {
            return new Fold(title, answer, figure, lines, all, candidates, grid);
        }

        public Fold choosing(List<Candidate> all) {
            return new Fold(title, answer, figure, lines, sheets, all, grid);
        }

        public Fold with(Grid pairs) {
            return new Fold(title, answer, figure, lines, sheets, candidates, Optional.of(pairs));
        }
    }

    /** Our pairs against those expected: a row for each of ours, a column for each of theirs. */
    public record Grid(String caption, List<List<String>> theirs, List<GridRow> rows) {}

    /** @param chances in the order of the columns */
    public record GridRow(List<String> ours, List<String> chances) {}

    /** A question put by its address, so that it can be asked again; {@code said} is the question in one line. */
    public record Ask(String address, String said, List<SelectField> fields, Draw draw) {}

    /**
     * @param number which draw
     * @param again the query that draws again
     */
    public record Draw(String number, String again) {}

    /**
     * A pair for the decider.
     *
     * @param use the way to take it into the form; empty while none can be named
     */
    public record Candidate(String pair, String words, DoubtBar chance, Optional<ActionForm> use) {}
}
