package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Card;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.views.DeskView.Said;
import tiewright.http.views.DeskView.SideIn;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;
import tiewright.wording.Words;

/** What is on a court, or comes to it, in the words of its place on the board. */
final class CourtWords {
    private final VisibleEvent event;
    private final TieViews views;

    CourtWords(VisibleEvent event, TieViews views) {
        this.event = event;
        this.views = views;
    }

    static Said nothing(String words) {
        return new Said(words, List.of(), List.of());
    }

    /** The rubber and its two pairs. */
    Said rubber(Tie tie, RubberNo rubber) {
        List<String> pairs = Optional.ofNullable(tie.opened().get(rubber)).stream()
                .flatMap(two -> Stream.of(Side.values()).map(two::pair))
                .map(this::pair)
                .toList();
        return new Said(what(tie, rubber), pairs, List.of());
    }

    /** The same before it is called: somebody of its clubs may be wanted for a decider first. */
    Said toCall(Tie tie, RubberNo rubber) {
        Said said = rubber(tie, rubber);
        List<String> waiting = Stream.of(Side.values())
                .flatMap(side -> tie.club(side).stream())
                .flatMap(club -> event.tiesOf(club).stream())
                .filter(other -> !other.id().equals(tie.id())
                        && event.goesOn(other)
                        && event.progress(other).awaitsDecider())
                .distinct()
                .map(other -> say("page-desk.waits-for-its-decider", "tie", views.title(other)))
                .toList();
        return new Said(
                said.what(),
                Stream.concat(said.who().stream(), waiting.stream()).toList(),
                said.sides());
    }

    private String what(Tie tie, RubberNo rubber) {
        return say(
                rubber.isDecider() ? "page-desk.tie-decider" : "page-desk.tie-rubber",
                "tie",
                views.title(tie),
                "rubber",
                rubber);
    }

    private String pair(Optional<Pair> pair) {
        return pair.map(two ->
                        say("page-desk.pair", "first", event.name(two.first()), "second", event.name(two.second())))
                .orElseGet(() -> say("page-desk.nobody"));
    }

    /** The readings that differ, each with who entered it and when. */
    Said held(Tie tie, RubberNo rubber) {
        List<String> lines = new ArrayList<>();
        for (Card.Entry entry : tie.card(rubber).readings()) {
            String score = (TieViews.score(entry.games()) + " " + views.how(tie, entry.how())).strip();
            lines.add(say(
                    "page-desk.read-by",
                    "score",
                    score,
                    "who",
                    entry.by().name(),
                    "at",
                    HallClock.said(event.clock(entry.receivedAt()))));
        }
        return new Said(what(tie, rubber), lines, List.of());
    }

    Said level(Tie tie, VisibleExchange pairs) {
        String due = pairs.deadline()
                .map(at -> say("page-desk.decider-pairs-due-at", "at", HallClock.said(event.clock(at))))
                .orElseGet(() -> say("page-desk.decider-pairs"));
        return new Said(views.title(tie), List.of(due), sides(tie, pairs));
    }

    private List<SideIn> sides(Tie tie, VisibleExchange exchange) {
        return Stream.of(Side.values())
                .map(side -> new SideIn(views.side(tie, side), SheetsIn.state(event, exchange.side(side))))
                .toList();
    }

    /** The tie that is planned here next, and what it waits for. */
    Said toCome(Tie tie) {
        String next = say("page-desk.next-not-before", "at", views.when(tie));
        return new Said(
                next,
                Stream.concat(Stream.of(views.title(tie)), waits(tie).stream()).toList(),
                List.of());
    }

    private Optional<String> waits(Tie tie) {
        if (!tie.isReady() || tie.isOpened()) {
            return Optional.empty();
        }
        VisibleExchange sheets = event.exchange(ExchangeId.sheets(tie.id()));
        List<String> missing = Stream.of(Side.values())
                .filter(side ->
                        !sheets.side(side).in() && sheets.side(side).ruled().isEmpty())
                .map(side -> views.side(tie, side))
                .toList();
        if (missing.isEmpty()) {
            return sheets.deadline()
                    .map(at -> say("page-desk.both-in-opens-at", "at", HallClock.said(event.clock(at))));
        }
        return Optional.of(say("page-desk.waits-for-sheets", "count", missing.size(), "clubs", missing));
    }

    private String say(String code, Object... facts) {
        return Words.say(event, code, facts);
    }
}
