package tiewright.http.visit;

import java.util.List;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.wording.Words;

/** Sheets to name pairs on with a pencil: of one club for one tie, or for a tie that is not known yet. */
public final class BlankSheets {
    private final VisibleEvent event;
    private final TieViews views;
    private final TiePapers papers;

    public BlankSheets(VisibleEvent event) {
        this.event = event;
        this.views = new TieViews(event);
        this.papers = new TiePapers(event);
    }

    /** Every rubber of a tie. */
    public SheetView of(Tie tie, Side side) {
        return sheet(tie, side, ExchangeId.sheets(tie.id()), rows());
    }

    /** The pair for the decider. */
    public SheetView ofDecider(Tie tie, Side side) {
        return sheet(tie, side, ExchangeId.decider(tie.id()), List.of(row(RubberNo.DECIDER)));
    }

    private SheetView sheet(Tie tie, Side side, ExchangeId exchange, List<SheetView.Row> rows) {
        String line = Words.say(
                event,
                "page-visit.paper-tie",
                "tie",
                tie.id(),
                "title",
                views.title(tie),
                "stage",
                views.stage(tie),
                "when",
                views.when(tie));
        String until = event.deadline(exchange)
                .map(at -> Words.say(event, "page-visit.paper-until", "at", HallClock.said(event.clock(at))))
                .orElse("");
        return new SheetView(views.side(tie, side), State.NONE, (line + " " + until).strip(), rows, "");
    }

    /** For a tie that nobody knows yet: club, tie and time are written by hand. */
    public SheetView ofAny(String title) {
        return new SheetView(title, State.NONE, Words.say(event, "page-visit.paper-club-tie-and-time"), rows(), "");
    }

    private List<SheetView.Row> rows() {
        return RubberNo.upTo(event.conditions().rubbers()).stream()
                .map(this::row)
                .toList();
    }

    private SheetView.Row row(RubberNo rubber) {
        return new SheetView.Row(papers.label(rubber), "", "", "");
    }
}
