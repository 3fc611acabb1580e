package tiewright.http.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tiewright.event.ExchangeId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.DeskView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Which sheets and decider pairs are in, by the time at which they open; what stands in them nobody here can know. */
final class SheetsIn {
    private final Visit visit;
    private final VisibleEvent event;
    private final TieViews views;

    SheetsIn(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
    }

    List<DeskView.Sheets> groups() {
        Map<Instant, List<Awaited>> byDeadline = new TreeMap<>();
        for (Tie tie : TieOrder.sorted(List.copyOf(event.ties()))) {
            for (ExchangeId id : awaited(event, tie)) {
                VisibleExchange exchange = event.exchange(id);
                byDeadline
                        .computeIfAbsent(exchange.deadline().orElse(Instant.MAX), at -> new ArrayList<>())
                        .add(new Awaited(tie, id, exchange));
            }
        }
        List<DeskView.Sheets> groups = new ArrayList<>();
        byDeadline.forEach((at, all) -> groups.add(new DeskView.Sheets(
                "sheets-" + (groups.size() + 1),
                heading(at, all),
                all.stream().map(this::line).toList())));
        return groups;
    }

    private record Awaited(Tie tie, ExchangeId id, VisibleExchange exchange) {
        boolean isDecider() {
            return id.equals(ExchangeId.decider(tie.id()));
        }

        long in() {
            return List.of(exchange.home(), exchange.away()).stream()
                    .filter(side -> side.in() || side.ruled().isPresent())
                    .count();
        }
    }

    private String heading(Instant at, List<Awaited> all) {
        boolean deciders = all.stream().allMatch(Awaited::isDecider);
        String code = at.equals(Instant.MAX)
                ? "page-desk.sheets-without-a-time"
                : deciders ? "page-desk.decider-pairs-due" : "page-desk.sheets-due";
        return visit.say(
                code,
                "at",
                at.equals(Instant.MAX) ? "" : HallClock.said(event.clock(at)),
                "in",
                all.stream().mapToLong(Awaited::in).sum(),
                "all",
                2 * all.size());
    }

    private DeskView.Line line(Awaited one) {
        Tie tie = one.tie();
        return new DeskView.Line(
                String.join(", ", event.order().courts(tie)),
                "/desk/tie/" + tie.id(),
                views.title(tie),
                new DeskView.SideIn(
                        views.side(tie, Side.HOME), state(event, one.exchange().home())),
                new DeskView.SideIn(
                        views.side(tie, Side.AWAY), state(event, one.exchange().away())));
    }

    /** The exchanges of the tie that somebody waits for. */
    private static List<ExchangeId> awaited(VisibleEvent event, Tie tie) {
        List<ExchangeId> ids = new ArrayList<>();
        if (event.isGone(tie)) {
            return ids;
        }
        if (tie.isReady() && !tie.isOpened() && tie.start().isPresent() && event.goesOn(tie)) {
            ids.add(ExchangeId.sheets(tie.id()));
        }
        if (event.progress(tie).awaitsDecider() && !tie.isDeciderOpened()) {
            ids.add(ExchangeId.decider(tie.id()));
        }
        return ids;
    }

    static State state(VisibleEvent event, VisibleExchange.VisibleSide side) {
        Words words = Words.of(event);
        if (side.ruled().isPresent()) {
            return new State(
                    Mark.KEPT,
                    words.say(
                            side.ruled().get().forfeited()
                                    ? "page-desk.forfeited-by-ruling"
                                    : "page-desk.supplied-by-ruling"));
        }
        if (!side.in()) {
            return new State(Mark.MISSING, words.say("page-desk.not-in"));
        }
        return new State(Mark.SEALED, words.say(side.atDesk() ? "page-desk.in" : "page-desk.in-kept-on-the-phone"));
    }
}
