package tiewright.http.visit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.DayLine;
import tiewright.http.pieces.Moved;
import tiewright.wording.Words;

/** The day of one club, tie by tie, told from its own side. */
public final class OwnDay {
    private final VisibleEvent event;
    private final Words words;
    private final TieViews views;
    private final ClubId club;

    public OwnDay(Visit visit, ClubId club) {
        this.event = visit.event();
        this.words = visit.words();
        this.views = visit.ties();
        this.club = club;
    }

    public List<DayLine> lines() {
        return TieOrder.sorted(event.tiesOf(club)).stream().map(this::line).toList();
    }

    public DayLine line(Tie tie) {
        return line(tie, "/tie/" + tie.id());
    }

    public DayLine line(Tie tie, String href) {
        Side side = tie.sideOf(club).orElseThrow();
        String court = views.where(tie);
        return new DayLine(
                views.when(tie),
                new Changes(event).last(tie).map(Moved::old).orElse(""),
                views.side(tie, side.other()),
                court.toLowerCase(Locale.ROOT),
                strip(tie, side),
                detail(tie, side),
                score(tie, side),
                href);
    }

    private List<DayLine.Rubber> strip(Tie tie, Side side) {
        TieProgress progress = event.progress(tie);
        if (!tie.isOpened() && !Scored.is(event, tie)) {
            return List.of();
        }
        return views.rubbers(tie).stream()
                .map(rubber -> {
                    String kind = kind(progress, side, rubber);
                    return new DayLine.Rubber(
                            kind + (rubber.isDecider() ? " decider" : ""),
                            words.say("page-visit.strip-" + kind, "rubber", TieViews.rubber(words, rubber)));
                })
                .toList();
    }

    private static String kind(TieProgress progress, Side side, RubberNo rubber) {
        if (progress.held().contains(rubber)) {
            return "held";
        }
        Optional<RubberScore> score = progress.rubbers().stream()
                .filter(one -> one.rubber().equals(rubber))
                .findFirst();
        return score.map(one ->
                        one.winner().map(won -> won == side ? "won" : "lost").orElse("void"))
                .orElse("left");
    }

    private DayLine.Score score(Tie tie, Side side) {
        TieProgress progress = event.progress(tie);
        boolean begun = Scored.is(event, tie);
        String rubbers = begun ? progress.won(side) + "–" + progress.won(side.other()) : "";
        return new DayLine.Score(rubbers, words.say("page-visit.own-" + standing(tie, side)));
    }

    private String standing(Tie tie, Side side) {
        TieProgress progress = event.progress(tie);
        boolean begun = Scored.is(event, tie);
        if (event.isGone(tie) && !(progress.finished() && begun)) {
            return "gone";
        }
        if (progress.finished() && begun) {
            return progress.winner().map(won -> won == side ? "won" : "lost").orElse("drawn");
        }
        if (progress.awaitsDecider()) {
            return "level";
        }
        if (begun || !tie.calls().isEmpty()) {
            return "on";
        }
        return tie.isOpened() ? "opened" : tie.isReady() ? "to-come" : "not-sure";
    }

    private String detail(Tie tie, Side side) {
        if (event.isGone(tie) || event.progress(tie).finished() && !tie.cards().isEmpty()) {
            return "";
        }
        if (tie.isOpened()) {
            return event.progress(tie).held().isEmpty() ? "" : words.say("page-visit.two-cards-differ");
        }
        VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
        boolean ours = exchange.side(side).in();
        boolean theirs = exchange.side(side.other()).in();
        String in = !ours && !theirs
                ? ""
                : words.say("page-visit.sheets-" + (ours && theirs ? "both" : ours ? "ours" : "theirs"));
        String likely = views.expected(tie);
        return in.isEmpty() || likely.isEmpty() ? in + likely : in + "; " + likely;
    }
}
