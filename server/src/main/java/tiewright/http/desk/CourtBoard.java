package tiewright.http.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Court;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.views.DeskView.Look;
import tiewright.http.views.DeskView.Press;
import tiewright.http.views.DeskView.Said;
import tiewright.http.views.DeskView.Spot;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** Every court: what is on it or what comes, how long, and what can be pressed for it, the likeliest alone. */
final class CourtBoard {
    private final Visit visit;
    private final VisibleEvent event;
    private final TieViews views;
    private final CourtWords words;
    private final List<Tie> ties;
    private final Callables callables;

    CourtBoard(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
        this.words = new CourtWords(event, views);
        this.ties = TieOrder.sorted(
                event.ties().stream().filter(tie -> !event.isGone(tie)).toList());
        this.callables = new Callables(visit);
    }

    List<Spot> spots() {
        return event.courts().stream()
                .sorted(Comparator.comparing(Court::name, TextOrder.NUMBERS_BY_VALUE))
                .map(this::spot)
                .toList();
    }

    /** The first of these that there is: on court, two entries that differ, level, to be called, to come, nothing. */
    private Spot spot(Court court) {
        if (!court.usable()) {
            return of(court, Look.OUT, say("page-desk.out-of-use"), CourtWords.nothing(""), List.of());
        }
        return playing(court)
                .or(() -> held(court))
                .or(() -> level(court))
                .or(() -> toCall(court))
                .or(() -> toCome(court))
                .orElseGet(() -> of(
                        court,
                        Look.FREE,
                        say("page-desk.free"),
                        CourtWords.nothing(say("page-desk.nothing-planned-here")),
                        elsewhere(court)));
    }

    private Optional<Spot> playing(Court court) {
        return ties.stream()
                .flatMap(tie -> on(tie, court))
                .max(Comparator.comparing(Running::since))
                .map(one -> playing(court, one));
    }

    private record Running(Tie tie, RubberNo rubber, Instant since) {}

    private Stream<Running> on(Tie tie, Court court) {
        List<RubberNo> left = event.progress(tie).left();
        return tie.calls().entrySet().stream()
                .filter(call -> call.getValue().court().equals(court.name()) && left.contains(call.getKey()))
                .map(call -> new Running(tie, call.getKey(), call.getValue().at()));
    }

    private Spot playing(Court court, Running one) {
        Tie tie = one.tie();
        Said said = words.rubber(tie, one.rubber());
        Optional<Instant> stopped = Optional.ofNullable(tie.stopped().get(one.rubber()));
        String stop = StopPages.path(tie, one.rubber());
        Press enter = way("page-desk.enter-score", said, "/cards/" + tie.id() + "/" + one.rubber());
        if (stopped.isPresent()) {
            String since = say("page-desk.stopped-since", "at", clock(stopped.get()));
            return of(court, Look.HELD, since, said, List.of(way("page-desk.look-at-the-clock", said, stop), enter));
        }
        long minutes = Math.max(0, Duration.between(one.since(), event.now()).toMinutes());
        return new Spot(
                court.name(),
                CourtPage.of(court.name()),
                Look.ON,
                say("page-desk.on-for", "minutes", minutes),
                Optional.of(one.since()),
                said,
                List.of(enter, Press.form(say("page-desk.stop-play"), said.what(), stop, List.of())));
    }

    private Optional<Spot> held(Court court) {
        return ties.stream()
                .flatMap(tie -> event.progress(tie).held().stream()
                        .filter(rubber -> whereWas(tie, rubber).contains(court.name()))
                        .map(rubber -> held(court, tie, rubber)))
                .findFirst();
    }

    private List<String> whereWas(Tie tie, RubberNo rubber) {
        return Optional.ofNullable(tie.calls().get(rubber))
                .map(call -> List.of(call.court()))
                .orElseGet(() -> event.order().courts(tie));
    }

    private Spot held(Court court, Tie tie, RubberNo rubber) {
        Said said = words.held(tie, rubber);
        Instant since = tie.card(rubber).inForce().stream()
                .map(entry -> entry.receivedAt())
                .max(Comparator.naturalOrder())
                .orElse(event.now());
        return of(
                court,
                Look.HELD,
                say("page-desk.held-since", "at", clock(since)),
                said,
                List.of(way("page-desk.settle-from-the-card", said, "/cards/" + tie.id() + "/" + rubber + "/correct")));
    }

    private Optional<Spot> level(Court court) {
        return ties.stream()
                .filter(tie -> event.progress(tie).awaitsDecider()
                        && !tie.isDeciderOpened()
                        && event.order().courts(tie).contains(court.name()))
                .findFirst()
                .map(tie -> {
                    VisibleExchange pairs = event.exchange(ExchangeId.decider(tie.id()));
                    return of(
                            court,
                            Look.ON,
                            say(
                                    "page-desk.level",
                                    "home",
                                    event.progress(tie).won(Side.HOME),
                                    "away",
                                    event.progress(tie).won(Side.AWAY)),
                            words.level(tie, pairs),
                            List.of(way("page-desk.decider-pairs", words.level(tie, pairs), "/desk/tie/" + tie.id())));
                });
    }

    private Optional<Spot> toCall(Court court) {
        return callables
                .first(court.name())
                .map(one -> of(
                        court,
                        Look.FREE,
                        say("page-desk.to-be-called"),
                        words.toCall(one.tie(), one.rubber()),
                        List.of(callables.press(one, court.name()))));
    }

    private Optional<Spot> toCome(Court court) {
        return ties.stream()
                .filter(tie -> event.goesOn(tie)
                        && !tie.isInPlay()
                        && event.order().courts(tie).contains(court.name()))
                .findFirst()
                .map(tie -> of(court, Look.FREE, say("page-desk.free"), words.toCome(tie), elsewhere(court)));
    }

    /** A free court can take what waits for a court that is taken, or for none. */
    private List<Press> elsewhere(Court court) {
        return callables.elsewhere().isEmpty()
                ? List.of()
                : List.of(Press.way(
                        say("page-desk.call-a-rubber-here"),
                        say("page-desk.court", "court", court.name()),
                        CourtPage.of(court.name())));
    }

    private Press way(String words, Said beside, String path) {
        return Press.way(say(words), beside.what(), path);
    }

    private static Spot of(Court court, Look look, String state, Said said, List<Press> presses) {
        return new Spot(court.name(), CourtPage.of(court.name()), look, state, Optional.empty(), said, presses);
    }

    private String clock(Instant at) {
        return HallClock.said(event.clock(at));
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
