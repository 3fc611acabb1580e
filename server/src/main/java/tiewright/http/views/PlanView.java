package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Progress;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/**
 * Making an order of play.
 *
 * @param progress while a search goes on
 * @param failed the last search broke off
 * @param found what the last search gave
 * @param sections the forms; none while a search goes on
 * @param pinned what was pinned by hand, each with its form to take it back
 */
public record PlanView(
        Refusal refusal,
        NavLink back,
        Optional<Progress> progress,
        boolean failed,
        Optional<Found> found,
        List<WorkView.Section> sections,
        List<ActionForm> pinned) {
    public PlanView {
        sections = List.copyOf(sections);
        pinned = List.copyOf(pinned);
    }

    /** What a search gave: a verdict, what it means, and the plan itself where there is one. */
    public record Found(State state, List<String> lines, Optional<Chart> chart, Optional<ReasonTable> ties) {
        public Found {
            lines = List.copyOf(lines);
        }
    }
}
