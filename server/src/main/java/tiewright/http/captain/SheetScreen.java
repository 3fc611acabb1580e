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
        this.what =
                here.id().kind() == SheetKind.RUBBERS ? "sheet" : visit.words().say("page-captain.pair-for-a-decider");
    }

    /** @param open the form stands open, because somebody is naming pairs */
    Screen screen(Tried tried, boolean open) {
        Optional<Decision.Sealed> kept = exchange.isOpened()
                ? Optional.empty()
                : visit.ask(ClubAnswers::new).ownSheet(here.id());
        SheetFormView view = new SheetFormView(
                tried.refusal(),
                now(kept),
                exchange.isOpened() ? visit.words().say("page-captain.both-sheets-are-open-they") : "",
                rule(),
                exchange.isOpened() ? List.of() : askedFirst(),
                starts(),
                naming(kept.isPresent(), tried, open),
                actions());
        String title = visit.words()
                .say(
                        "page-captain.for-the-tie-with",
                        "club",
                        visit.event().clubName(visit.club()),
                        "what",
                        what,
                        "other",
                        views.side(here.tie(), here.side().other()));
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
                again
                        ? visit.words().say("page-captain.seal-this-in-place-of", "what", what)
                        : visit.words().say("page-captain.seal-this", "what", what),
                keeping());
    }

    private Receipt receipt(String code) {
        return Receipt.closed(
                visit.words().say("page-captain.your-receipt"),
                code,
                visit.words().say("page-captain.it-was-made-when-this", "what", what),
                "/help/receipts",
                visit.words().say("page-captain.how-anybody-can-check-it"));
    }

    private SheetFormView.Keeping keeping() {
        boolean onPhone = own.in() && !own.atDesk();
        return new SheetFormView.Keeping(
                here.id().kind().code(),
                here.id().tie().code(),
                visit.club().code(),
                onPhone,
                onPhone
                        ? visit.words().say("page-captain.your-sheet-is-on-the")
                        : visit.words().say("page-captain.kept-on-the-phone-not"));
    }

    private List<String> rule() {
        List<String> lines = new ArrayList<>();
        exchange.deadline()
                .ifPresent(at -> lines.add(visit.words()
                        .say(
                                "page-captain.both-open-at-until-then",
                                "at",
                                HallClock.said(visit.event().clock(at)))));
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
                                .orElse(visit.words().say("page-captain.no-pair")),
                        one.getValue()
                                .map(pair -> visit.event().name(pair.second()))
                                .orElse(""),
                        ""))
                .toList();
        String times = own.sealed() == 1
                ? visit.words().say("page-captain.sealed-once")
                : visit.words().say("page-captain.sealed-times-the-last-one", "sealed", own.sealed());
        String at = own.sealedAt()
                .map(moment -> visit.words()
                        .say(
                                "page-captain.at",
                                "moment",
                                HallClock.said(visit.event().clock(moment))))
                .orElse("");
        return new SheetView(
                visit.words().say("page-captain.in-for-you-now"),
                new State(Mark.SEALED, "sealed"),
                times + at,
                rows,
                visit.words().say("page-captain.show-the-names"));
    }

    private List<SheetFormView.Start> starts() {
        return here.lastSheet().isPresent()
                ? List.of(new SheetFormView.Start(
                        visit.words().say("page-captain.start-from-our-last-opened"), here.path() + "?from=last"))
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
            actions.add(ActionForm.of(
                            "tell",
                            path + "/tell",
                            visit.words().say("page-captain.tell-my-club"),
                            Button.other(visit.words().say("page-captain.let-my-club-see-it")))
                    .saying(visit.words().say("page-captain.players-who-came-by-a")));
        }
        if (!own.openingAsked() && !exchange.past()) {
            actions.add(ActionForm.of(
                            "ask",
                            path + "/ask",
                            visit.words().say("page-captain.open-earlier"),
                            Button.other(visit.words().say("page-captain.ask-for-the-opening-now")))
                    .saying(visit.words().say("page-captain.both-sheets-open-before-the")));
        }
        return actions;
    }
}
