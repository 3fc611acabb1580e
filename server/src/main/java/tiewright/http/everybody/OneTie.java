package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.TieView;
import tiewright.http.visit.Changes;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.sheet.Swaps;
import tiewright.wording.Words;

/** One tie as its page shows it: closed, turned over, level, over. */
final class OneTie {
    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final Tie tie;
    private final TieViews views;
    private final CardView card;

    OneTie(Visit visit, Tie tie) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.tie = tie;
        this.views = visit.ties();
        this.card = new TiePapers(event).card(tie);
    }

    TieView view() {
        VisibleExchange sheets = event.exchange(ExchangeId.sheets(tie.id()));
        return new TieView(
                head(sheets),
                tie.isOpened() ? List.of() : faces(sheets, event.conditions().rubbers()),
                tie.isOpened() ? rubbers() : List.of(),
                new TieView.Papers(
                        opened(sheets),
                        new TieReceipts(event, views, tie).all(),
                        changes(sheets),
                        new Changes(event).history(tie)),
                new TieWays(visit, tie).all(),
                copy());
    }

    private TieView.Head head(VisibleExchange sheets) {
        TieProgress progress = event.progress(tie);
        boolean begun = !progress.rubbers().isEmpty();
        return new TieView.Head(
                views.side(tie, Side.HOME),
                begun ? Integer.toString(progress.won(Side.HOME)) : "",
                views.side(tie, Side.AWAY),
                begun ? Integer.toString(progress.won(Side.AWAY)) : "",
                progress.winner().map(side -> side == Side.HOME ? 1 : 2).orElse(0),
                card.when() + views.onDuty(tie) + byWeight(progress),
                views.state(tie),
                next(sheets));
    }

    /** What the rubbers won weigh, where that and not their number says who has won. */
    private String byWeight(TieProgress progress) {
        return progress.weights().areEqual() || progress.rubbers().isEmpty()
                ? ""
                : " "
                        + words.say(
                                "page-everybody.by-weight",
                                "home",
                                progress.weightWon(Side.HOME),
                                "away",
                                progress.weightWon(Side.AWAY),
                                "needed",
                                progress.toWin());
    }

    private TieView.Next next(VisibleExchange sheets) {
        Optional<VisibleExchange> closed = !tie.isOpened()
                ? Optional.of(sheets)
                : event.progress(tie).awaitsDecider() && !tie.isDeciderOpened()
                        ? Optional.of(event.exchange(ExchangeId.decider(tie.id())))
                        : Optional.empty();
        if (closed.isEmpty() || !event.goesOn(tie)) {
            return new TieView.Next(
                    event.progress(tie).rubbers().isEmpty() && tie.isOpened()
                            ? words.say("page-everybody.fixed-from-now")
                            : views.expected(tie),
                    Optional.empty());
        }
        boolean past = closed.get().past();
        return new TieView.Next(
                closed.get()
                        .deadline()
                        .map(at -> past
                                ? words.say("page-everybody.open-once-both")
                                : words.say("page-everybody.open-together", "at", HallClock.said(event.clock(at))))
                        .orElse(views.expected(tie)),
                closed.get().deadline().filter(at -> !past));
    }

    private List<TieView.Face> faces(VisibleExchange exchange, int bars) {
        return Stream.of(Side.values())
                .map(side -> {
                    boolean in = exchange.side(side).in();
                    return new TieView.Face(
                            views.side(tie, side),
                            in
                                    ? new State(Mark.SEALED, words.say("page-everybody.face-sealed"))
                                    : new State(Mark.MISSING, words.say("page-everybody.face-not-in")),
                            in,
                            bars);
                })
                .toList();
    }

    private List<TieView.Rubber> rubbers() {
        List<RubberNo> numbers = views.rubbers(tie);
        List<TieView.Rubber> rubbers = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            rubbers.add(rubber(numbers.get(i), card.rows().get(i)));
        }
        return rubbers;
    }

    private TieView.Rubber rubber(RubberNo number, CardView.Row row) {
        boolean named = tie.opened().containsKey(number);
        return new TieView.Rubber(
                number.isDecider() ? Integer.toString(event.conditions().rubbers() + 1) : number.toString(),
                number.isDecider(),
                new TieView.Line(named ? row.homePlayers() : List.of(), row.homePoints()),
                new TieView.Line(named ? row.awayPlayers() : List.of(), row.awayPoints()),
                row.winner(),
                row.note(),
                named ? List.of() : faces(event.exchange(ExchangeId.decider(tie.id())), 1));
    }

    private String opened(VisibleExchange sheets) {
        return sheets.openedAt()
                .map(at -> words.say("page-everybody.both-opened-at", "at", HallClock.said(event.clock(at))))
                .orElse("");
    }

    /** What the notice at the opening said of a sheet that a newer link had sealed, then every pair that was replaced. */
    private List<String> changes(VisibleExchange sheets) {
        Stream<String> swaps = event.notices().stream()
                .map(Event.Posted::notice)
                .filter(notice -> notice.tie().filter(tie.id()::equals).isPresent())
                .filter(notice -> notice.text().code().equals(Swaps.SAYING))
                .map(notice -> words.saying(notice.text()));
        Stream<Exchange.Replacement> replaced = Stream.concat(
                sheets.replacements().stream(), event.exchange(ExchangeId.decider(tie.id())).replacements().stream());
        return Stream.concat(swaps, replaced.map(this::change)).toList();
    }

    private String change(Exchange.Replacement change) {
        return words.say(
                "page-everybody.is-now-approved-by",
                "at",
                HallClock.said(event.clock(change.at())),
                "club",
                event.clubName(change.fact().club()),
                "rubber",
                TieViews.rubber(words, change.fact().rubber()),
                "pair",
                change.fact()
                        .pair()
                        .map(two -> words.say(
                                "page-everybody.and",
                                "first",
                                event.name(two.first()),
                                "second",
                                event.name(two.second())))
                        .orElse(words.say("page-everybody.no-pair")),
                "door",
                change.fact().door(),
                "approvedBy",
                change.fact().approvedBy());
    }

    private CopyText copy() {
        return new CopyText(
                "copy-tie",
                words.say("page-everybody.this-tie-as-text"),
                text(),
                words.say("page-everybody.copy"),
                words.say("page-everybody.copied"));
    }

    private String text() {
        List<String> lines = new ArrayList<>();
        lines.add(card.title() + ", " + card.when());
        for (CardView.Row row : card.rows()) {
            String line = words.say(
                    "page-everybody.rubber-as-text",
                    "rubber",
                    row.label(),
                    "home",
                    String.join("/", row.homePlayers()),
                    "away",
                    String.join("/", row.awayPlayers()),
                    "points",
                    row.homePoints().isEmpty() ? "" : row.homePoints() + "-" + row.awayPoints(),
                    "note",
                    row.note());
            lines.add(line.strip());
        }
        lines.add(card.totalWords() + ": " + card.homeTotal() + "-" + card.awayTotal());
        return String.join("\n", lines);
    }
}
