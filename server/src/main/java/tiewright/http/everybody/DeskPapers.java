package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Club;
import tiewright.event.RubberNo;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.Qr;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.http.views.PackView.Grid;
import tiewright.http.views.PackView.Leaf;
import tiewright.http.views.PackView.Numbered;
import tiewright.http.views.PackView.Row;
import tiewright.http.visit.BlankSheets;
import tiewright.http.visit.ConditionGroups;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.Visit;
import tiewright.paper.QrCode;

/** What the desk needs to go on with a pencil: who is here, the wall, a numbered card for each tie, spare cards and sheets. */
final class DeskPapers {
    private static final int SPARE_CARDS = 4;
    private static final int SPARE_SHEETS = 4;

    private final Visit visit;
    private final VisibleEvent event;
    private final TiePapers papers;

    /** @param visit as everybody's: paper lies about */
    DeskPapers(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.papers = new TiePapers(event);
    }

    List<Leaf> leaves() {
        if (event.clubs().isEmpty()) {
            return List.of();
        }
        List<Leaf> leaves = new ArrayList<>();
        leaves.add(leaf("sign-in")
                .withGrids(event.clubs().stream().map(this::signIn).toList()));
        leaves.addAll(new WallPapers(visit).leaves());
        leaves.add(leaf("cards").withCards(cards()));
        leaves.add(leaf("spare-sheets").withSheets(spareSheets()));
        leaves.add(leaf("conditions").withRules(ConditionGroups.of(visit.words(), event.conditions())));
        return leaves;
    }

    private Grid signIn(Club club) {
        return new Grid(
                "sign-in-" + club.id(),
                club.name(),
                List.of(
                        visit.say("page-everybody.sign-in-player"),
                        visit.say("page-everybody.sign-in-here"),
                        visit.say("page-everybody.sign-in-signed")),
                event.squad(club.id()).stream()
                        .map(player -> Row.of(event.name(player.id()), "☐", ""))
                        .toList());
    }

    /** One for each tie that is not finished, then some for whatever comes. */
    private List<Numbered> cards() {
        List<Numbered> cards = new ArrayList<>();
        TieOrder.sorted(List.copyOf(event.ties())).stream()
                .filter(tie -> event.goesOn(tie) && !event.progress(tie).finished())
                .forEach(tie -> cards.add(
                        new Numbered(tie.id().toString(), withDecider(papers.card(tie)), form("/cards/" + tie.id()))));
        for (int i = 1; i <= SPARE_CARDS; i++) {
            cards.add(new Numbered(
                    visit.say("page-everybody.spare-card", "number", i), BlankCards.of(event), form("/cards")));
        }
        return cards;
    }

    /** Nobody knows yet whether it comes to a decider: the card has room for it. */
    private CardView withDecider(CardView card) {
        String decider = papers.label(RubberNo.DECIDER);
        boolean there = card.rows().stream().anyMatch(row -> row.label().equals(decider));
        List<CardView.Row> rows = new ArrayList<>(card.rows());
        if (event.conditions().expectsDeciders() && !there) {
            rows.add(BlankCards.row(decider));
        }
        return new CardView(
                card.title(),
                card.when(),
                State.NONE,
                card.home(),
                card.away(),
                rows,
                card.totalWords(),
                card.homeTotal(),
                card.awayTotal(),
                card.homeSigned(),
                card.awaySigned());
    }

    private Qr form(String path) {
        QrCode code = QrCode.of(visit.hall().address().url() + path);
        return new Qr(code.size(), code.path(), visit.say("page-everybody.qr-of-the-form", "path", path));
    }

    private List<SheetView> spareSheets() {
        BlankSheets blank = new BlankSheets(event);
        List<SheetView> sheets = new ArrayList<>();
        for (int i = 0; i < SPARE_SHEETS; i++) {
            sheets.add(blank.ofAny(visit.say("page-everybody.sheet")));
        }
        return sheets;
    }

    private Leaf leaf(String which) {
        return Leaf.of(visit.say("page-everybody.desk." + which), visit.say("page-everybody.desk-how." + which));
    }
}
