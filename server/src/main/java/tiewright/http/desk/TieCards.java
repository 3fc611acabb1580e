package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Card;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.TieCardsView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.FactWords;

/** The card of a tie, rubber by rubber: what was entered, and what this visitor can do about it. */
final class TieCards {
    private final Visit visit;
    private final Tie tie;
    private final TieViews views;

    TieCards(Visit visit, Tie tie) {
        this.visit = visit;
        this.tie = tie;
        this.views = new TieViews(visit.event());
    }

    TieCardsView view() {
        return new TieCardsView(
                new TiePapers(visit.event()).card(tie),
                views.rubbers(tie).stream().map(this::rubber).toList());
    }

    private TieCardsView.Rubber rubber(RubberNo rubber) {
        Card card = tie.card(rubber);
        boolean empty = card.standing() == Card.Standing.EMPTY;
        boolean settled = !empty && visit.role().isOfficial();
        boolean stoppable = Door.STOP.opensFor(visit.role())
                && StopPages.stoppable(visit.event(), tie).contains(rubber);
        return new TieCardsView.Rubber(
                visit.say(rubber.isDecider() ? "page-desk.the-decider" : "page-desk.rubber-number", "rubber", rubber),
                "/cards/" + tie.id() + "/" + rubber + (settled ? "/correct" : ""),
                settled
                        ? (card.standing() == Card.Standing.HELD
                                ? visit.say("page-desk.settle-from-the-card")
                                : visit.say("page-desk.correct"))
                        : visit.say("page-desk.enter-this-rubber"),
                state(card),
                entries(rubber),
                stoppable ? List.of(StopPages.press(visit, tie, rubber)) : List.of(),
                settled ? LogPage.of(tie, rubber) : "",
                !empty && Door.OFFICIALS.opensFor(visit.role()) ? Addresses.correction(tie, rubber) : "");
    }

    private State state(Card card) {
        return switch (card.standing()) {
            case EMPTY -> State.NONE;
            case RECORDED -> new State(Mark.PLAIN, say("page-desk.entered-once"));
            case CONFIRMED -> new State(Mark.KEPT, say("page-desk.confirmed"));
            case HELD -> new State(Mark.HELD, say("page-desk.held-two-differ"));
            case SETTLED -> new State(Mark.KEPT, say("page-desk.settled"));
        };
    }

    /** Everything entered for the rubber, oldest first: who, when received, what; nothing is ever dropped. */
    List<String> entries(RubberNo rubber) {
        List<String> lines = new ArrayList<>();
        for (Card.Entry entry : tie.card(rubber).entries()) {
            String what = entry.takenBack()
                    ? visit.say("page-desk.taken-back")
                    : (TieViews.score(entry.games()) + " " + views.how(tie, entry.how())).strip();
            boolean because = !entry.because().isEmpty();
            String code = entry.settles()
                    ? because ? "page-desk.entry-settled-because" : "page-desk.entry-settled"
                    : because ? "page-desk.entry-because" : "page-desk.entry";
            lines.add(say(
                    code,
                    "at",
                    HallClock.said(visit.event().clock(entry.receivedAt())),
                    "who",
                    entry.by().name(),
                    "what",
                    what,
                    "reason",
                    new FactWords(visit.words()).because(entry.because())));
        }
        return lines;
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
