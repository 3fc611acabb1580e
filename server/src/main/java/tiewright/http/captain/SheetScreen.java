package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.SheetKind;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.State;
import tiewright.http.views.ActionForm;
import tiewright.http.views.SheetFormView;
import tiewright.http.visit.ClosedForm;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

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
        this.what = here.id().kind() == SheetKind.RUBBERS ? "sheet" : visit.say("page-captain.pair-for-a-decider");
    }

    /** @param given somebody just chose what stands in the form */
    Screen screen(Tried tried, boolean given) {
        SheetFormView view = new SheetFormView(
                tried.refusal(),
                head(),
                new SealedNow(here).view(),
                own.receipt().map(this::receipt),
                exchange.isOpened() ? visit.say("page-captain.both-sheets-are-open-they") : "",
                exchange.isOpened() ? SheetFormView.Asks.NOTHING : HurtFirst.asks(visit, tried),
                new SheetNaming(here, chosen).form(tried, given, seal()),
                actions());
        String title = visit.say(
                "page-captain.for-the-tie-with",
                "club",
                visit.event().clubName(visit.club()),
                "what",
                what,
                "other",
                other());
        return Screen.of(ClosedForm.isOpened(visit) ? "sheetAnswer" : "sheetForm", title, view);
    }

    private String other() {
        return views.side(here.tie(), here.side().other());
    }

    private String seal() {
        return own.in()
                ? visit.say("page-captain.seal-this-in-place-of", "what", what)
                : visit.say("page-captain.seal-this", "what", what);
    }

    private SheetFormView.Head head() {
        boolean sheets = here.id().kind() == SheetKind.RUBBERS;
        String at = exchange.deadline()
                .map(moment -> HallClock.said(visit.event().clock(moment)))
                .orElse("");
        return new SheetFormView.Head(
                visit.say(sheets ? "page-captain.sheet-for" : "page-captain.decider-pair-for", "other", other()),
                own.atDesk() && !exchange.isOpened()
                        ? new State(Mark.SEALED, visit.say("page-captain.yours-is-in"))
                        : State.NONE,
                at.isEmpty() || exchange.isOpened() ? "" : visit.say(until(), "at", at),
                exchange.deadline().filter(moment -> !exchange.isOpened()),
                exchange.isOpened() ? "" : String.join(" · ", new Theirs(here, other()).said()),
                rule());
    }

    private String until() {
        if (!own.in()) {
            return "page-captain.seal-by";
        }
        return exchange.past() ? "page-captain.open-once-theirs-is-in" : "page-captain.open-at";
    }

    private Receipt receipt(String code) {
        return new Receipt(
                visit.say("page-captain.your-receipt"),
                code,
                visit.say("page-captain.it-was-made-when-this", "what", what),
                List.of(),
                "/help/receipts",
                visit.say("page-captain.how-anybody-can-check-it"));
    }

    private List<String> rule() {
        List<String> lines = new ArrayList<>();
        if (own.in() && !exchange.isOpened() && !visit.event().mayRead(here.id())) {
            lines.add(visit.say("page-captain.newer-than-the-sheet"));
        }
        exchange.deadline()
                .ifPresent(at -> lines.add(visit.say(
                        exchange.past() && !exchange.isOpened()
                                ? "page-captain.open-once-both-are-in"
                                : "page-captain.both-open-at-until-then",
                        "at",
                        HallClock.said(visit.event().clock(at)))));
        lines.add(visit.ask(Answers::new).lateRule());
        return lines;
    }

    private List<ActionForm> actions() {
        List<ActionForm> actions = new ArrayList<>();
        if (exchange.isOpened() || !own.in()) {
            return actions;
        }
        String path = here.path();
        actions.add(own.told() ? untell(path) : tell(path));
        if (!own.openingAsked() && !exchange.past()) {
            actions.add(ActionForm.of(
                            "ask",
                            path + "/ask",
                            visit.say("page-captain.open-earlier"),
                            Button.other(visit.say("page-captain.ask-for-the-opening-now")))
                    .saying(visit.say("page-captain.both-sheets-open-before-the")));
        }
        return actions;
    }

    private ActionForm tell(String path) {
        return ActionForm.of(
                        "tell",
                        path + "/tell",
                        visit.say("page-captain.tell-my-club"),
                        Button.other(visit.say("page-captain.let-my-club-see-it")))
                .saying(visit.say("page-captain.players-who-came-by-a")
                        + (here.isReadInTheAir() ? " " + visit.say("page-captain.told-in-the-air") : ""));
    }

    private ActionForm untell(String path) {
        return ActionForm.of(
                        "untell",
                        path + "/untell",
                        visit.say("page-captain.your-club-sees-it"),
                        Button.other(visit.say("page-captain.hide-it-again")))
                .saying(visit.say("page-captain.who-has-read-it-knows"));
    }
}
