package tiewright.http.visit;

import java.util.List;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.views.PackView.Grid;
import tiewright.http.views.PackView.Row;
import tiewright.wording.Words;

/** An order of play as a list in large letters. */
public final class TieGrids {
    private TieGrids() {}

    /** @param ties those without a time stand last and say so */
    public static Grid of(VisibleEvent event, String id, String caption, List<Tie> ties) {
        TieViews views = new TieViews(event);
        return new Grid(
                id,
                caption,
                List.of(
                        Words.say(event, "page-visit.grid-start"),
                        Words.say(event, "page-visit.grid-court"),
                        Words.say(event, "page-visit.grid-tie"),
                        Words.say(event, "page-visit.grid-clubs"),
                        Words.say(event, "page-visit.grid-round")),
                TieOrder.sorted(ties).stream()
                        .map(tie -> row(event, views, tie))
                        .toList());
    }

    private static Row row(VisibleEvent event, TieViews views, Tie tie) {
        return Row.of(
                views.when(tie),
                String.join(", ", event.order().courts(tie)),
                tie.id().toString(),
                views.title(tie),
                views.stage(tie) + views.onDuty(tie));
    }
}
