package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Progress;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;
import tiewright.picture.DayPicture;

/**
 * Something went wrong, in four screens: what it was, its particulars, the ways to go on, and one of them with its press.
 *
 * @param step which screen it is, and that nothing has happened yet
 * @param progress of the search that looks for ways
 * @param verdict what was asked, and from when on it is planned
 * @param lines to choose from: what happened, or how to go on
 * @param asked the particulars
 * @param chosen one way in full
 */
public record BreaksView(
        Refusal refusal,
        Step step,
        Optional<Progress> progress,
        List<String> verdict,
        List<Line> lines,
        Optional<Asked> asked,
        Optional<Choice> chosen) {
    public BreaksView {
        verdict = List.copyOf(verdict);
        lines = List.copyOf(lines);
    }

    public record Step(NavLink back, String words) {}

    /**
     * The line is the press.
     *
     * @param answer at its right, such as when the day then ends; may be empty
     */
    public record Line(String what, String detail, String answer, String href) {}

    /** @param more what need not be touched, behind a fold */
    public record Asked(WorkView.WorkForm form, List<FormField> more) {
        public Asked {
            more = List.copyOf(more);
        }
    }

    /**
     * @param picture where each tie is published and where it would be
     * @param publish fields and press; empty where it cannot be played
     */
    public record Choice(
            State state,
            List<String> lines,
            DayPicture picture,
            Chart chart,
            ReasonTable moves,
            Optional<WorkView.WorkForm> publish) {
        public Choice {
            lines = List.copyOf(lines);
        }
    }
}
