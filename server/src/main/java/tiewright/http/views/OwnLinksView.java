package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;

/**
 * The links of one club: when and by whom each was made or ended, and what may be done with it.
 *
 * @param back to where one came from
 * @param intro sentences before the first link
 * @param ended no longer open anything
 * @param sections the form for a new one, where the reader may make one
 */
public record OwnLinksView(
        Refusal refusal,
        NavLink back,
        List<String> intro,
        List<Line> inUse,
        List<Line> ended,
        List<WorkView.Section> sections) {
    public OwnLinksView {
        intro = List.copyOf(intro);
        inUse = List.copyOf(inUse);
        ended = List.copyOf(ended);
        sections = List.copyOf(sections);
    }

    /**
     * @param name such as L3
     * @param whom for whom it is and what it opens
     * @param made when and by whom
     * @param state how it stands now
     */
    public record Line(String name, String whom, String made, String state, List<Button> buttons) {
        public Line {
            buttons = List.copyOf(buttons);
        }
    }
}
