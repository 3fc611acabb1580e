package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.http.views.ActionForm;
import tiewright.http.views.SheetFormView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Countdowns;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.sheet.Choices;

/** What a captain sees of one exchange: the own sheet, its receipt, the form for another, and what else can be done. */
final class SheetScreen {
    private final OwnExchange here;
    private final Visit visit;
    private final TieViews views;
    private final VisibleExchange exchange;
    private final VisibleExchange.VisibleSide own;
    private final Map<RubberNo, List<PlayerId>> chosen;
    private final String what;

    /** @param chosen who stands in the form: none, one or two for each rubber */
    SheetScreen(OwnExchange here, Map<RubberNo, List<PlayerId>> chosen) {
        this.here = here;
        this.visit = here.visit();
        this.views = new TieViews(visit.event());
        this.exchange = here.exchange();
        this.own = here.own();
        this.chosen = chosen;
        this.what = here.id().kind() == SheetKind.RUBBERS ? "sheet" : "pair for a decider";
    }

    /** @param open the form stands open, because somebody is naming pairs */
    Screen screen(Tried tried, boolean open) {
        Optional<Decision.Sealed> kept = exchange.isOpened()
                ? Optional.empty()
                : visit.ask(ClubAnswers::new).ownSheet(here.id());
        SheetFormView view = new SheetFormView(
                tried.refusal(),
                now(kept),
                exchange.isOpened() ? "Both sheets are open; they stand on the page of the tie." : "",
                rule(),
                exchange.isOpened() ? List.of() : askedFirst(),
                starts(),
                naming(kept.isPresent(), tried, open),
                actions());
        String title = visit.event().clubName(visit.club()) + ": " + what + " for the tie with "
                + views.side(here.tie(), here.side().other());
        return Screen.of("sheetForm", title, view);
    }

    private SheetFormView.InNow now(Optional<Decision.Sealed> kept) {
        return new SheetFormView.InNow(
                own.in() ? Optional.empty() : Countdowns.of(visit, views, here.tie(), here.id()),
                kept.map(one -> inForYouNow(one.sheet())),
                own.receipt().map(this::receipt));
    }

    private SheetFormView.Naming naming(boolean again, Tried tried, boolean open) {
        Choices choices = visit.ask(ClubAnswers::new).choices(here.id(), chosen);
        return new SheetFormView.Naming(
                here.path(),
                open,
                SheetFields.rubbers(choices, visit.event()::name, visit.words(), tried),
                unnamed(),
                again ? "Seal this " + what + " in place of the other" : "Seal this " + what,
                keeping());
    }

    private Receipt receipt(String code) {
        return Receipt.closed(
                "Your receipt",
                code,
                "It was made when this " + what
                        + " was sealed. Both clubs' receipts come out at the deadline, the secrets with the opening.",
                "/help/receipts",
                "How anybody can check it");
    }

    private SheetFormView.Keeping keeping() {
        boolean onPhone = own.in() && !own.atDesk();
        return new SheetFormView.Keeping(
                here.id().kind().code(),
                here.id().tie().code(),
                visit.club().code(),
                onPhone,
                onPhone
                        ? "Your sheet is on the phone it was made on. Hand it in there before the deadline: nothing can be opened without it."
                        : "Kept on the phone, not even this machine has it before you hand it in. Do not clear the browser until then.");
    }

    private List<String> rule() {
        List<String> lines = new ArrayList<>();
        exchange.deadline()
                .ifPresent(at ->
                        lines.add("Both open at " + HallClock.said(visit.event().clock(at))
                                + "; until then nobody outside your club can read yours, not even"
                                + " the desk. You may replace it until the opening."));
        lines.add(visit.ask(Answers::new).lateRule());
        return lines;
    }

    /** What the captain is asked before somebody marked as hurt or ill is named again. */
    private List<String> askedFirst() {
        return visit.ask(Answers::new).hurt(visit.club()).stream()
                .map(visit.event()::name)
                .map(Cautions::beforeNaming)
                .toList();
    }

    private SheetView inForYouNow(Sheet sheet) {
        List<SheetView.Row> rows = sheet.pairs().entrySet().stream()
                .map(one -> new SheetView.Row(
                        TieViews.rubber(one.getKey()),
                        one.getValue()
                                .map(pair -> visit.event().name(pair.first()))
                                .orElse("no pair"),
                        one.getValue()
                                .map(pair -> visit.event().name(pair.second()))
                                .orElse(""),
                        ""))
                .toList();
        String times = own.sealed() == 1 ? "sealed once" : "sealed " + own.sealed() + " times, the last one counts";
        String at = own.sealedAt()
                .map(moment -> ", at " + HallClock.said(visit.event().clock(moment)))
                .orElse("");
        return new SheetView("In for you now", new State(Mark.SEALED, "sealed"), times + at, rows, "Show the names");
    }

    private List<SheetFormView.Start> starts() {
        return here.lastSheet().isPresent()
                ? List.of(new SheetFormView.Start("Start from our last opened sheet", here.path() + "?from=last"))
                : List.of();
    }

    private List<String> unnamed() {
        List<PlayerId> named = chosen.values().stream().flatMap(List::stream).toList();
        return visit.event().squad(visit.club()).stream()
                .filter(player -> !named.contains(player.id()))
                .map(player -> visit.event().name(player.id()))
                .toList();
    }

    private List<ActionForm> actions() {
        List<ActionForm> actions = new ArrayList<>();
        if (exchange.isOpened() || !own.in()) {
            return actions;
        }
        String path = here.path();
        if (!own.told()) {
            actions.add(
                    ActionForm.of("tell", path + "/tell", "Tell my club", Button.other("Let my club see it now"))
                            .saying(
                                    "Players who came by a personal link of your club then see who plays and who rests. Nobody else does."));
        }
        if (!own.openingAsked() && !exchange.past()) {
            actions.add(ActionForm.of("ask", path + "/ask", "Open earlier", Button.other("Ask for the opening now"))
                    .saying("Both sheets open before the deadline only if both captains ask."));
        }
        return actions;
    }
}
