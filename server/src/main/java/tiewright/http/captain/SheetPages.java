package tiewright.http.captain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
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
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.sheet.AskOpening;
import tiewright.sheet.Choices;
import tiewright.sheet.HandInSheet;
import tiewright.sheet.KeepOnPhone;
import tiewright.sheet.SealSheet;
import tiewright.sheet.TellClub;

/** The captain names pairs and seals them: for the rubbers of a tie, and for its decider. */
final class SheetPages implements Page {

    @Override
    public void at(Routes routes) {
        for (SheetKind kind : SheetKind.values()) {
            String path = path(kind) + "{tie}";
            routes.get(
                    Door.CAPTAIN,
                    path,
                    visit -> visit.show(screen(visit, kind, start(visit, kind), Tried.NOTHING, false)));
            routes.post(Door.CAPTAIN, path, visit -> post(visit, kind));
            routes.post(
                    Door.CAPTAIN,
                    path + "/ask",
                    visit -> act(visit, kind, new AskOpening(id(visit, kind), visit.club())));
            routes.post(
                    Door.CAPTAIN,
                    path + "/tell",
                    visit -> act(visit, kind, new TellClub(id(visit, kind), visit.club())));
        }
    }

    private static String path(SheetKind kind) {
        return kind == SheetKind.RUBBERS ? "/captain/sheet/" : "/captain/decider/";
    }

    private static ExchangeId id(Visit visit, SheetKind kind) {
        return new ExchangeId(ownTie(visit).id(), kind);
    }

    private static Tie ownTie(Visit visit) {
        Tie tie = visit.tie();
        if (!tie.has(visit.club())) {
            throw new NotFound("Your club does not play in the tie " + tie.id() + ".");
        }
        return tie;
    }

    /** What the form starts with: the sealed sheet, or another one that was asked for, or nothing. */
    private static Map<RubberNo, List<PlayerId>> start(Visit visit, SheetKind kind) {
        ExchangeId id = id(visit, kind);
        String from = Optional.ofNullable(visit.ctx().queryParam("from")).orElse("");
        if (from.equals("last")) {
            return lastSheet(visit, id).map(SheetFields::chosen).orElse(Map.of());
        }
        return visit.ask(ClubAnswers::new)
                .ownSheet(id)
                .map(kept -> SheetFields.chosen(kept.sheet()))
                .orElse(Map.of());
    }

    /** The club's sheet that was opened last. */
    private static Optional<Sheet> lastSheet(Visit visit, ExchangeId id) {
        return visit.event().tiesOf(visit.club()).stream()
                .map(tie -> visit.event().exchange(new ExchangeId(tie.id(), id.kind())))
                .filter(VisibleExchange::isOpened)
                .max(Comparator.comparing(exchange -> exchange.openedAt().orElse(Instant.EPOCH)))
                .flatMap(exchange -> exchange.opened()
                        .flatMap(opened -> visit.event()
                                .tie(exchange.id().tie())
                                .flatMap(tie -> tie.sideOf(visit.club()))
                                .map(side -> side == Side.HOME ? opened.home() : opened.away())));
    }

    private static void post(Visit visit, SheetKind kind) {
        Form form = visit.form();
        List<RubberNo> rubbers = id(visit, kind).rubbers(visit.event().conditions());
        Map<RubberNo, List<PlayerId>> chosen = SheetFields.chosen(form, rubbers);
        ExchangeId id = id(visit, kind);
        switch (form.text("step")) {
            case "seal" -> seal(visit, id, form, rubbers, chosen);
            case "keep" -> keep(visit, id, form);
            case "hand-in" -> handIn(visit, id, form, rubbers);
            default -> visit.show(screen(visit, kind, chosen, Tried.again(form), true));
        }
    }

    /** Only the receipt comes here: the sheet stays on the phone. */
    private static void keep(Visit visit, ExchangeId id, Form form) {
        String receipt = form.mustText("receipt");
        visit.attempt(
                form,
                () -> new KeepOnPhone(id, visit.club(), receipt),
                path(id.kind()) + id.tie(),
                tried -> screen(visit, id.kind(), Map.of(), tried, true));
    }

    private static void handIn(Visit visit, ExchangeId id, Form form, List<RubberNo> rubbers) {
        Optional<Sheet> sheet = SheetFields.sheet(form, rubbers);
        visit.attempt(
                form,
                () -> new HandInSheet(id, visit.club(), sheet.orElseThrow(), form.text("secret")),
                path(id.kind()) + id.tie(),
                tried -> screen(visit, id.kind(), SheetFields.chosen(form, rubbers), tried, true));
    }

    private static void seal(
            Visit visit, ExchangeId id, Form form, List<RubberNo> rubbers, Map<RubberNo, List<PlayerId>> chosen) {
        Optional<Sheet> sheet = SheetFields.sheet(form, rubbers);
        visit.attempt(
                form,
                () -> new SealSheet(
                        id,
                        visit.club(),
                        sheet.orElseThrow(),
                        visit.hall().tokens().secret()),
                path(id.kind()) + id.tie(),
                tried -> screen(visit, id.kind(), chosen, tried, true));
    }

    private static void act(Visit visit, SheetKind kind, Decision decision) {
        visit.attempt(
                visit.form(),
                () -> decision,
                path(kind) + visit.path("tie"),
                tried -> screen(visit, kind, start(visit, kind), tried, false));
    }

    private static Screen screen(
            Visit visit, SheetKind kind, Map<RubberNo, List<PlayerId>> chosen, Tried tried, boolean open) {
        Tie tie = ownTie(visit);
        ExchangeId id = id(visit, kind);
        TieViews views = new TieViews(visit.event());
        Side side = tie.sideOf(visit.club()).orElseThrow();
        VisibleExchange exchange = visit.event().exchange(id);
        Optional<Decision.Sealed> own = exchange.isOpened()
                ? Optional.empty()
                : visit.ask(ClubAnswers::new).ownSheet(id);
        Choices choices = visit.ask(ClubAnswers::new).choices(id, chosen);
        String what = kind == SheetKind.RUBBERS ? "sheet" : "pair for a decider";
        SheetFormView view = new SheetFormView(
                path(kind) + tie.id(),
                exchange.isOpened() ? "Both sheets are open; they stand on the page of the tie." : "",
                rule(visit, exchange),
                exchange.isOpened() ? List.of() : askedFirst(visit),
                exchange.side(side).in() ? Optional.empty() : Countdowns.of(visit, views, tie, id),
                own.map(kept -> ownView(visit, exchange, side, kept.sheet())),
                exchange.side(side)
                        .receipt()
                        .map(code -> Receipt.closed(
                                "Your receipt",
                                code,
                                "It was made when this " + what
                                        + " was sealed. Both clubs' receipts come out at the deadline, the secrets with the opening.",
                                "/help/receipts",
                                "How anybody can check it")),
                tried.refusal(),
                open,
                SheetFields.rubbers(choices, visit.event()::name, visit.words(), tried),
                starts(visit, id),
                unnamed(visit, chosen),
                own.isPresent() ? "Seal this " + what + " in place of the other" : "Seal this " + what,
                keeping(visit, id, exchange.side(side)),
                actions(kind, tie, exchange, side));
        String title = visit.event().clubName(visit.club()) + ": " + what + " for the tie with "
                + views.side(tie, side.other());
        return Screen.of("sheetForm", title, view);
    }

    private static SheetFormView.Keeping keeping(Visit visit, ExchangeId id, VisibleExchange.VisibleSide own) {
        boolean onPhone = own.in() && !own.atDesk();
        return new SheetFormView.Keeping(
                id.kind().code(),
                id.tie().code(),
                visit.club().code(),
                onPhone,
                onPhone
                        ? "Your sheet is on the phone it was made on. Hand it in there before the deadline: nothing can be opened without it."
                        : "Kept on the phone, not even this machine has it before you hand it in. Do not clear the browser until then.");
    }

    private static List<String> rule(Visit visit, VisibleExchange exchange) {
        List<String> lines = new ArrayList<>();
        exchange.deadline()
                .ifPresent(at ->
                        lines.add("Both open at " + HallClock.said(visit.event().clock(at))
                                + "; until then nobody outside your club can read yours, not even"
                                + " the desk. You may replace it until the opening."));
        lines.add(visit.ask(Answers::new).lateRule());
        return lines;
    }

    private static SheetView ownView(Visit visit, VisibleExchange exchange, Side side, Sheet sheet) {
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
        VisibleExchange.VisibleSide own = exchange.side(side);
        String times = own.sealed() == 1 ? "sealed once" : "sealed " + own.sealed() + " times, the last one counts";
        String at = own.sealedAt()
                .map(moment -> ", at " + HallClock.said(visit.event().clock(moment)))
                .orElse("");
        return new SheetView("In for you now", new State(Mark.SEALED, "sealed"), times + at, rows, "Show the names");
    }

    private static List<SheetFormView.Start> starts(Visit visit, ExchangeId id) {
        return lastSheet(visit, id).isPresent()
                ? List.of(new SheetFormView.Start(
                        "Start from our last opened sheet", path(id.kind()) + id.tie() + "?from=last"))
                : List.of();
    }

    private static List<String> unnamed(Visit visit, Map<RubberNo, List<PlayerId>> chosen) {
        List<PlayerId> named = chosen.values().stream().flatMap(List::stream).toList();
        return visit.event().squad(visit.club()).stream()
                .filter(player -> !named.contains(player.id()))
                .map(player -> visit.event().name(player.id()))
                .toList();
    }

    private static List<ActionForm> actions(SheetKind kind, Tie tie, VisibleExchange exchange, Side side) {
        VisibleExchange.VisibleSide own = exchange.side(side);
        List<ActionForm> actions = new ArrayList<>();
        if (exchange.isOpened() || !own.in()) {
            return actions;
        }
        String path = path(kind) + tie.id();
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

    /** What the captain is asked before somebody marked as hurt or ill is named again. */
    private static List<String> askedFirst(Visit visit) {
        return visit.ask(Answers::new).hurt(visit.club()).stream()
                .map(visit.event()::name)
                .map(Cautions::beforeNaming)
                .toList();
    }
}
