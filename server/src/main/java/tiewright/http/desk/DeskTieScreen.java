package tiewright.http.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tiewright.event.ExchangeId;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.DeskTieView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** One tie as the desk has it before it: both sheets, the card, and what can be done. */
final class DeskTieScreen {
    private final TieOptions from;
    private final Tie tie;
    private final VisibleEvent event;

    private DeskTieScreen(TieOptions from) {
        this.from = from;
        this.tie = from.tie;
        this.event = from.event;
    }

    static Screen of(Visit visit, Tried tried) {
        return new DeskTieScreen(new TieOptions(visit, visit.tie(), tried)).screen();
    }

    private Screen screen() {
        List<DeskTieView.Exchange> exchanges = Stream.of(SheetKind.values())
                .filter(kind ->
                        kind == SheetKind.RUBBERS || event.progress(tie).awaitsDecider() || tie.isDeciderOpened())
                .map(kind -> exchange(new ExchangeId(tie.id(), kind)))
                .toList();
        return Screen.of(
                "deskTie",
                from.say("page-desk.desk-2", "tie", from.views.title(tie)),
                new DeskTieView(
                        new TiePapers(event).card(tie),
                        from.tried.refusal(),
                        exchanges,
                        calls(),
                        new PlayForms(from).forms(),
                        "/cards/" + tie.id()));
    }

    private List<String> calls() {
        List<String> calls = new ArrayList<>();
        tie.calls()
                .forEach((rubber, call) -> calls.add(from.say(
                        rubber.isDecider() ? "page-desk.decider-called-at" : "page-desk.rubber-called-at",
                        "rubber",
                        rubber,
                        "court",
                        call.court(),
                        "at",
                        clock(call.at()))));
        return calls;
    }

    private DeskTieView.Exchange exchange(ExchangeId id) {
        VisibleExchange exchange = event.exchange(id);
        return new DeskTieView.Exchange(
                from.say(id.kind() == SheetKind.RUBBERS ? "page-desk.sheets" : "page-desk.pairs-for-the-decider"),
                time(exchange),
                Stream.of(Side.values()).map(side -> side(exchange, side)).toList(),
                exchange.isOpened() || !tie.isReady() ? List.of() : new SheetForms(from, id).forms());
    }

    private String time(VisibleExchange exchange) {
        if (exchange.isOpened()) {
            return exchange.openedAt()
                    .map(at -> from.say("page-desk.opened-at", "at", clock(at)))
                    .orElse("");
        }
        String rule = from.visit.ask(Answers::new).lateRule();
        return exchange.deadline()
                .map(at -> from.say("page-desk.until", "at", clock(at), "rule", rule))
                .orElseGet(() -> from.say("page-desk.until-no-time-yet", "rule", rule));
    }

    private DeskTieView.Side side(VisibleExchange exchange, Side side) {
        VisibleExchange.VisibleSide one = exchange.side(side);
        List<String> detail = new ArrayList<>();
        if (!exchange.isOpened()) {
            one.sealedAt().ifPresent(at -> detail.add(from.say("page-desk.since", "moment", clock(at))));
        }
        if (one.openingAsked()) {
            detail.add(from.say("page-desk.asks-to-open-now"));
        }
        return new DeskTieView.Side(
                from.views.side(tie, side),
                exchange.isOpened() ? new State(Mark.OPENED, from.say("page-desk.opened")) : SheetsIn.state(event, one),
                String.join(", ", detail));
    }

    private String clock(Instant at) {
        return HallClock.said(event.clock(at));
    }
}
