package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.RubberNo;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.State;
import tiewright.http.visit.TiePapers;
import tiewright.wording.Words;

/** A card for any tie, everything on it left to a pencil. */
final class BlankCards {
    private BlankCards() {}

    static CardView of(VisibleEvent event) {
        TiePapers papers = new TiePapers(event);
        List<CardView.Row> rows =
                new ArrayList<>(RubberNo.upTo(event.conditions().rubbers()).stream()
                        .map(rubber -> row(papers.label(rubber)))
                        .toList());
        if (event.conditions().expectsDeciders()) {
            rows.add(row(papers.label(RubberNo.DECIDER)));
        }
        return new CardView(
                Words.say(event, "page-everybody.tie"),
                Words.say(event, "page-everybody.time-and-court"),
                State.NONE,
                "",
                "",
                rows,
                Words.say(event, "page-everybody.rubbers-won"),
                "",
                "",
                Words.say(event, "page-everybody.signed"),
                Words.say(event, "page-everybody.signed"));
    }

    static CardView.Row row(String label) {
        return new CardView.Row(label, List.of("", ""), List.of("", ""), "", "", 0, "");
    }
}
