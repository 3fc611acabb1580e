package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Progress;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;

/**
 * The day of one club so far and ahead, for its captain's eyes only.
 *
 * @param progress while a plan is being looked for
 * @param notes about the plan as a whole
 * @param ties planned, in the order in which they are played; empty without a plan
 */
public record DayPlanView(
        Refusal refusal,
        List<String> cautions,
        ActionForm form,
        Optional<Progress> progress,
        List<String> notes,
        List<Tie> ties,
        Promises promises,
        ReasonTable players) {

    /**
     * What was promised to single players.
     *
     * @param notes about all of them together
     * @param form to promise something more, or something else
     */
    public record Promises(List<String> notes, List<Promise> lines, ActionForm form) {}

    /** @param words what was promised, and whether it can still be kept */
    public record Promise(String words, ActionForm takeBack) {}

    /** @param words what the sheet is worth and what it gives away */
    public record Tie(String title, String href, String words, List<Line> lines) {}

    public record Line(String rubber, String pair) {}
}
