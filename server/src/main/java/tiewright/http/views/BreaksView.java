package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Progress;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/**
 * The day breaks.
 *
 * @param verdict what was asked and from when on is planned
 * @param search which search the choices come from, sent with the press
 * @param publish what is asked of whoever publishes
 * @param look the question; none while a search goes on
 */
public record BreaksView(
        Refusal refusal,
        NavLink back,
        Optional<Progress> progress,
        boolean failed,
        List<String> verdict,
        List<Choice> choices,
        String search,
        List<FormField> publish,
        Optional<WorkView.WorkForm> look) {
    public BreaksView {
        verdict = List.copyOf(verdict);
        choices = List.copyOf(choices);
        publish = List.copyOf(publish);
    }

    /**
     * One way to go on.
     *
     * @param press publishes it; none where it cannot be played
     */
    public record Choice(
            String id, String title, State state, List<String> lines, Chart chart, Optional<Button> press) {
        public Choice {
            lines = List.copyOf(lines);
        }
    }
}
