package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Card;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.wording.Words;

/** The papers of a tie as one viewer may see them: its card and its two sheets. */
public final class TiePapers {
    private final VisibleEvent event;
    private final TieViews words;

    public TiePapers(VisibleEvent event) {
        this.event = event;
        this.words = new TieViews(event);
    }

    /** The card with everything that counts so far. */
    public CardView card(Tie tie) {
        TieProgress progress = event.progress(tie);
        List<CardView.Row> rows = new ArrayList<>();
        words.rubbers(tie).forEach(rubber -> rows.add(row(tie, rubber, progress)));
        return new CardView(
                words.title(tie),
                words.stage(tie) + ", " + words.when(tie) + (words.where(tie).isEmpty() ? "" : ", " + words.where(tie)),
                words.state(tie),
                words.side(tie, Side.HOME),
                words.side(tie, Side.AWAY),
                rows,
                Words.say(event, "page-visit.rubbers-won"),
                progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(Side.HOME)),
                progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(Side.AWAY)),
                Words.say(event, "page-visit.signed-for-2", "home", words.side(tie, Side.HOME)),
                Words.say(event, "page-visit.signed-for", "away", words.side(tie, Side.AWAY)));
    }

    private CardView.Row row(Tie tie, RubberNo rubber, TieProgress progress) {
        Optional<RubberScore> score = progress.rubbers().stream()
                .filter(one -> one.rubber().equals(rubber))
                .findFirst();
        Optional<Tie.OpenedRubber> pairs = Optional.ofNullable(tie.opened().get(rubber));
        return new CardView.Row(
                label(rubber),
                pairs.map(pair -> words.names(pair.home())).orElse(List.of("", "")),
                pairs.map(pair -> words.names(pair.away())).orElse(List.of("", "")),
                score.map(one -> points(one, Side.HOME)).orElse(""),
                score.map(one -> points(one, Side.AWAY)).orElse(""),
                score.flatMap(RubberScore::winner)
                        .map(side -> side == Side.HOME ? 1 : 2)
                        .orElse(0),
                score.map(one -> words.how(tie, one.how())).orElse(held(tie, rubber)));
    }

    /** Rubber 1, or Decider. */
    public String label(RubberNo rubber) {
        return Words.say(
                event, "page-visit.rubber", "rubber", rubber, "kind", rubber.isDecider() ? "decider" : "rubber");
    }

    private static String points(RubberScore score, Side side) {
        return score.games().stream()
                .map(game -> Integer.toString(side == Side.HOME ? game.home() : game.away()))
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }

    private String held(Tie tie, RubberNo rubber) {
        if (tie.stopped().containsKey(rubber)) {
            return Words.say(
                    event,
                    "page-visit.stopped-since",
                    "stopped",
                    HallClock.said(event.clock(tie.stopped().get(rubber))));
        }
        return tie.card(rubber).standing() == Card.Standing.HELD
                ? Words.say(event, "page-visit.held-two-cards-differ")
                : "";
    }

    /** The two sheets: covered until both are open. */
    public List<SheetView> sheets(Tie tie) {
        return List.of(sheet(tie, Side.HOME), sheet(tie, Side.AWAY));
    }

    private SheetView sheet(Tie tie, Side side) {
        VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
        String title = words.side(tie, side);
        if (tie.isOpened()) {
            return opened(tie, side, exchange);
        }
        boolean in = exchange.side(side).in();
        String until = exchange.deadline()
                .map(at -> exchange.past()
                        ? Words.say(event, "page-visit.open-once-both-are-in")
                        : Words.say(event, "page-visit.both-open-at", "at", HallClock.said(event.clock(at))))
                .orElse(Words.say(event, "page-visit.no-time-yet"));
        return new SheetView(
                title,
                in
                        ? new State(Mark.SEALED, Words.say(event, "page-visit.in"))
                        : new State(Mark.PLAIN, Words.say(event, "page-visit.not-in")),
                until,
                List.of(),
                "");
    }

    private SheetView opened(Tie tie, Side side, VisibleExchange exchange) {
        List<SheetView.Row> rows = tie.opened().entrySet().stream()
                .map(one -> sheetRow(one.getKey(), one.getValue().pair(side)))
                .toList();
        String at = exchange.openedAt()
                .map(moment -> Words.say(event, "page-visit.opened-at", "moment", HallClock.said(event.clock(moment))))
                .orElse("");
        return new SheetView(
                words.side(tie, side), new State(Mark.OPENED, Words.say(event, "page-visit.opened")), at, rows, "");
    }

    private SheetView.Row sheetRow(RubberNo rubber, Optional<Pair> pair) {
        return new SheetView.Row(
                label(rubber),
                pair.map(two -> event.name(two.first())).orElse(Words.say(event, "page-visit.no-pair")),
                pair.map(two -> event.name(two.second())).orElse(""),
                "");
    }
}
