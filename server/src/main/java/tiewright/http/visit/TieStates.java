package tiewright.http.visit;

import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.wording.Words;

/** How far a tie is, as one mark with its words. What keeps it from going on is said before how far it has come. */
final class TieStates {
    private final VisibleEvent event;
    private final TieViews views;

    TieStates(VisibleEvent event, TieViews views) {
        this.event = event;
        this.views = views;
    }

    State of(Tie tie) {
        TieProgress progress = event.progress(tie);
        return keptBack(tie, progress).orElseGet(() -> {
            if (progress.finished() && !progress.rubbers().isEmpty()) {
                return ended(tie, progress);
            }
            return progress.awaitsDecider() ? decider(tie) : underWay(tie, progress);
        });
    }

    private Optional<State> keptBack(Tie tie, TieProgress progress) {
        if (event.isGone(tie) && !(progress.finished() && Scored.is(event, tie))) {
            return Optional.of(
                    new State(Mark.STOP, Words.say(event, "page-visit.withdrew-not-played", "clubs", gone(tie))));
        }
        if (!progress.held().isEmpty()) {
            return Optional.of(state(Mark.HELD, "page-visit.two-cards-differ"));
        }
        return tie.stopped().isEmpty() ? Optional.empty() : Optional.of(state(Mark.HELD, "page-visit.play-stopped"));
    }

    private State ended(Tie tie, TieProgress progress) {
        return new State(
                Mark.FINAL,
                progress.winner()
                        .map(side -> Words.say(event, "page-visit.won", "side", views.side(tie, side)))
                        .orElseGet(() -> Words.say(event, "page-visit.drawn")));
    }

    private State decider(Tie tie) {
        return tie.isDeciderOpened()
                ? state(Mark.PLAYING, "page-visit.decider")
                : state(Mark.HELD, "page-visit.level-decider-to-be-named");
    }

    private State underWay(Tie tie, TieProgress progress) {
        if (!tie.calls().isEmpty()) {
            return state(Mark.PLAYING, "page-visit.on-court");
        }
        if (!progress.rubbers().isEmpty()) {
            return state(Mark.PLAYING, "page-visit.being-played");
        }
        return tie.isOpened() ? state(Mark.OPENED, "page-visit.sheets-opened") : beforeOpening(tie);
    }

    private List<String> gone(Tie tie) {
        return tie.clubs().stream()
                .filter(event.withdrawals()::containsKey)
                .map(event::clubName)
                .toList();
    }

    private State beforeOpening(Tie tie) {
        VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
        boolean home = exchange.home().in();
        boolean away = exchange.away().in();
        if (home && away) {
            return state(Mark.SEALED, "page-visit.both-sheets-in");
        }
        if (home || away) {
            String club = views.side(tie, home ? Side.HOME : Side.AWAY);
            return new State(Mark.SEALED, Words.say(event, "page-visit.sheet-in", "club", club));
        }
        return exchange.deadline()
                .filter(deadline -> tie.isReady())
                .map(deadline -> HallClock.said(event.clock(deadline)))
                .map(until -> new State(Mark.PLAIN, Words.say(event, "page-visit.sheets-until", "deadline", until)))
                .orElse(State.NONE);
    }

    private State state(Mark mark, String code) {
        return new State(mark, Words.say(event, code));
    }
}
