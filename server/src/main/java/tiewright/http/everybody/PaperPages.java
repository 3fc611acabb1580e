package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.http.views.PaperListView;
import tiewright.http.views.PaperView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The paper twin: blank and filled sheets and cards, one press each. */
final class PaperPages implements Page {
    private static final int SHEETS_A_PAGE = 2;
    private static final int CARDS_A_PAGE = 4;

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ANYBODY,
                "/paper",
                visit -> visit.show(Screen.of("paperList", visit.say("page-everybody.to-print"), list(visit))));
        routes.get(
                Door.ANYBODY,
                "/paper/blank-sheets",
                visit -> show(visit, visit.say("page-everybody.blank-sheets"), blankSheets(forAll(visit))));
        routes.get(
                Door.ANYBODY,
                "/paper/blank-cards",
                visit -> show(visit, visit.say("page-everybody.blank-cards"), blankCards(forAll(visit))));
        routes.get(
                Door.ANYBODY,
                "/paper/sheets",
                visit -> show(visit, visit.say("page-everybody.opened-sheets"), sheets(forAll(visit))));
        routes.get(
                Door.ANYBODY,
                "/paper/cards",
                visit -> show(visit, visit.say("page-everybody.cards-of-all-ties"), cards(forAll(visit))));
        routes.get(Door.ANYBODY, "/paper/tie/{tie}", PaperPages::tie);
    }

    private static void tie(Visit visit) {
        VisibleEvent event = forAll(visit);
        TieViews views = new TieViews(event);
        TiePapers papers = new TiePapers(event);
        Tie tie = visit.tie();
        show(
                visit,
                views.title(tie),
                new PaperView(
                        Words.say(event, "page-everybody.the-card-and-the-sheets"),
                        tie.isOpened() ? papers.sheets(tie) : blank(event, views, tie),
                        List.of(papers.card(tie))));
    }

    /** Paper lies on courts and hangs on walls: whoever prints it, it shows what everybody may read, minors shortened. */
    private static VisibleEvent forAll(Visit visit) {
        return visit.asStranger().event();
    }

    private static void show(Visit visit, String title, PaperView view) {
        visit.show(Screen.of("paper", title, view));
    }

    private static PaperListView list(Visit visit) {
        List<PaperListView.Line> lines = new ArrayList<>(List.of(
                line(visit, "/paper/desk", "desk"),
                line(visit, Door.DESK.opensFor(visit.role()) ? Addresses.ENVELOPES : "/paper/envelopes", "envelopes"),
                line(visit, "/paper/wall", "wall")));
        visit.viewer().club().ifPresent(club -> lines.add(line(visit, PackPages.envelope(club), "own-envelope")));
        lines.addAll(List.of(
                line(visit, "/paper/blank-sheets", "blank-sheets"),
                line(visit, "/paper/blank-cards", "blank-cards"),
                line(visit, "/paper/cards", "cards"),
                line(visit, "/paper/sheets", "sheets"),
                line(visit, "/plan", "plan"),
                line(visit, "/plan/clubs", "clubs"),
                line(visit, "/ties", "ties"),
                line(visit, "/tables", "tables"),
                line(visit, "/conditions", "conditions")));
        return new PaperListView(lines);
    }

    private static PaperListView.Line line(Visit visit, String href, String what) {
        return new PaperListView.Line(
                href, visit.say("page-everybody.paper-" + what), visit.say("page-everybody.paper-" + what + "-detail"));
    }

    private static PaperView blankSheets(VisibleEvent event) {
        SheetView sheet = new SheetView(
                Words.say(event, "page-everybody.sheet"),
                State.NONE,
                Words.say(event, "page-everybody.club-tie-and-time"),
                rows(event),
                "");
        return new PaperView(
                Words.say(event, "page-everybody.write-the-pairs-fold-the"),
                Collections.nCopies(SHEETS_A_PAGE, sheet),
                List.of());
    }

    private static List<SheetView> blank(VisibleEvent event, TieViews views, Tie tie) {
        return List.of(
                new SheetView(
                        views.side(tie, Side.HOME),
                        State.NONE,
                        views.title(tie) + ", " + views.when(tie),
                        rows(event),
                        ""),
                new SheetView(
                        views.side(tie, Side.AWAY),
                        State.NONE,
                        views.title(tie) + ", " + views.when(tie),
                        rows(event),
                        ""));
    }

    private static List<SheetView.Row> rows(VisibleEvent event) {
        return RubberNo.upTo(event.conditions().rubbers()).stream()
                .map(rubber -> new SheetView.Row(new TiePapers(event).label(rubber), "", "", ""))
                .toList();
    }

    private static PaperView blankCards(VisibleEvent event) {
        return new PaperView(
                Words.say(event, "page-everybody.both-captains-compare-and-sign"),
                List.of(),
                Collections.nCopies(CARDS_A_PAGE, BlankCards.of(event)));
    }

    private static PaperView sheets(VisibleEvent event) {
        TiePapers papers = new TiePapers(event);
        TieViews views = new TieViews(event);
        List<SheetView> sheets = TieOrder.sorted(List.copyOf(event.ties())).stream()
                .filter(Tie::isOpened)
                .flatMap(tie -> papers.sheets(tie).stream()
                        .map(sheet -> new SheetView(
                                Words.say(event, "page-everybody.in", "sheet", sheet.title(), "tie", views.title(tie)),
                                sheet.state(),
                                sheet.barLine(),
                                sheet.rows(),
                                "")))
                .toList();
        return new PaperView(
                sheets.isEmpty() ? Words.say(event, "page-everybody.no-sheet-is-open-yet") : "", sheets, List.of());
    }

    private static PaperView cards(VisibleEvent event) {
        List<CardView> cards = TieOrder.sorted(List.copyOf(event.ties())).stream()
                .filter(Tie::isReady)
                .map(new TiePapers(event)::card)
                .toList();
        return new PaperView(
                cards.isEmpty() ? Words.say(event, "page-everybody.no-tie-has-both-its") : "", List.of(), cards);
    }
}
