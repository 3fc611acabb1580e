package tiewright.http.captain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Deadlines;
import tiewright.event.ExchangeId;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.CaptainView;
import tiewright.http.visit.Countdowns;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/**
 * What a captain has to hand in: a sheet or pair that is not in, and first of all one that lies on a phone; and of one that is
 * in what is still to be known: the other captain asks to open now, the clock stands still.
 */
final class DueSheets {
    private static final Instant NEVER = Instant.MAX;

    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final TieViews views;

    DueSheets(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.views = new TieViews(event);
    }

    List<CaptainView.Due> all(List<Tie> ties) {
        return ties.stream()
                .flatMap(tie -> Stream.of(sheet(tie), pair(tie)).flatMap(Optional::stream))
                .sorted(Comparator.comparing((CaptainView.Due due) -> !due.held())
                        .thenComparing(due -> due.deadline().orElse(NEVER)))
                .toList();
    }

    private Optional<CaptainView.Due> sheet(Tie tie) {
        return !tie.isReady() || tie.isOpened() || !event.goesOn(tie)
                ? Optional.empty()
                : due(tie, ExchangeId.sheets(tie.id()), "sheet");
    }

    private Optional<CaptainView.Due> pair(Tie tie) {
        boolean stands = visit.ask(Answers::new).restOfDecider(tie).isPresent();
        return CaptainPages.mayNeedPair(event, tie)
                        && (stands || event.progress(tie).awaitsDecider())
                ? due(tie, ExchangeId.decider(tie.id()), "pair")
                : Optional.empty();
    }

    private Optional<CaptainView.Due> due(Tie tie, ExchangeId id, String what) {
        VisibleExchange exchange = event.exchange(id);
        Side side = tie.sideOf(visit.club()).orElseThrow();
        String other = views.side(tie, side.other());
        boolean in = exchange.side(side).in();
        boolean onPhone = in && !exchange.side(side).atDesk();
        List<String> news = new Theirs(new OwnExchange(visit, id, tie, side), other).news();
        if (in && !onPhone) {
            return news(id, other, news.isEmpty() && id.kind() == SheetKind.DECIDER ? isIn(exchange) : news);
        }
        String press = words.say(onPhone ? "page-captain.hand-it-in" : "page-captain.name-the-" + what);
        List<String> lines = new ArrayList<>(
                onPhone ? List.of(words.say("page-captain.still-on-this-phone")) : lines(exchange, side, other));
        lines.addAll(news);
        return Optional.of(new CaptainView.Due(
                words.say("page-captain.due-" + what, "other", other),
                lines,
                exchange.deadline(),
                new NavLink(OwnExchange.path(id.kind()) + tie.id(), press, false),
                onPhone || !event.isLetIn() ? Optional.empty() : Optional.of(advice(tie)),
                onPhone));
    }

    /** The own one is in, and something about it is still to be known or answered. */
    private Optional<CaptainView.Due> news(ExchangeId id, String other, List<String> news) {
        boolean sheets = id.kind() == SheetKind.RUBBERS;
        return news.isEmpty()
                ? Optional.empty()
                : Optional.of(new CaptainView.Due(
                        words.say(sheets ? "page-captain.due-sheet" : "page-captain.due-pair", "other", other),
                        news,
                        event.exchange(id).deadline(),
                        new NavLink(OwnExchange.path(id.kind()) + id.tie(), words.say("page-captain.see-it"), false),
                        Optional.empty(),
                        false));
    }

    /** A pair for the decider stands in no line of the day: that it is in is said here. */
    private List<String> isIn(VisibleExchange exchange) {
        return List.of(exchange.deadline()
                .filter(at -> !exchange.past())
                .map(at -> words.say("page-captain.pair-is-in-until", "at", said(at)))
                .orElseGet(() -> words.say("page-captain.pair-is-in")));
    }

    private NavLink advice(Tie tie) {
        return new NavLink("/captain/proposal/" + tie.id(), words.say("frame.go.advice"), false);
    }

    private List<String> lines(VisibleExchange exchange, Side side, String other) {
        List<String> lines = new ArrayList<>();
        Optional<Instant> deadline = exchange.deadline();
        Optional<String> late = deadline.map(at -> Countdowns.late(visit, at)).filter(said -> !said.isEmpty());
        deadline.map(at -> late.orElseGet(() -> words.say("page-captain.seal-it-by", "at", said(at))))
                .ifPresent(lines::add);
        String theirs = words.say(
                exchange.side(side.other()).in() ? "page-captain.theirs-is-in" : "page-captain.theirs-is-not-in",
                "other",
                other);
        Optional<String> grace = deadline.map(at -> Deadlines.lastMinute(at, event.conditions()))
                .filter(last -> late.isEmpty() && last.isAfter(deadline.orElseThrow()))
                .map(last -> words.say("page-captain.grace-until", "at", said(last)));
        lines.add(theirs + grace.map(until -> " " + until).orElse(""));
        return lines;
    }

    private String said(Instant at) {
        return HallClock.said(event.clock(at));
    }
}
