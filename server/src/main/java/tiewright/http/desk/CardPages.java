package tiewright.http.desk;

import java.util.List;
import tiewright.desk.CorrectCard;
import tiewright.desk.Correction;
import tiewright.desk.RecordCard;
import tiewright.event.Card;
import tiewright.event.CorrectionChoice;
import tiewright.event.Decision;
import tiewright.event.How;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.views.CardsView;
import tiewright.http.views.TieCardsView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.ByRuling;
import tiewright.http.visit.CardFields;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Score;
import tiewright.wording.Words;

/** From a card to a score: one rubber at a time, the winner said in words before it counts. */
final class CardPages implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.CARDS,
                "/cards",
                visit -> visit.show(Screen.of("cards", visit.say("page-desk.enter-a-card"), all(visit.event()))));
        routes.get(
                Door.CARDS_OR_CAPTAIN,
                "/cards/{tie}",
                visit -> visit.show(Screen.of(
                        "tieCards",
                        visit.say("page-desk.card", "tie", new TieViews(visit.event()).title(visit.tie())),
                        cards(visit, visit.tie()))));
        routes.get(
                Door.CARDS_OR_CAPTAIN, "/cards/{tie}/{rubber}", visit -> visit.show(form(visit, false, Tried.NOTHING)));
        routes.post(Door.CARDS_OR_CAPTAIN, "/cards/{tie}/{rubber}", visit -> enter(visit, false));
        routes.get(Door.DESK, "/cards/{tie}/{rubber}/correct", visit -> visit.show(form(visit, true, Tried.NOTHING)));
        routes.post(Door.DESK, "/cards/{tie}/{rubber}/correct", visit -> enter(visit, true));
    }

    private static CardsView all(VisibleEvent event) {
        TieViews views = new TieViews(event);
        List<Tie> ties =
                TieOrder.sorted(event.ties().stream().filter(Tie::isReady).toList());
        return new CardsView(
                ties.stream()
                        .filter(event::goesOn)
                        .map(tie -> views.line(tie, "/cards/" + tie.id(), Words.say(event, "page-desk.enter")))
                        .toList(),
                ties.stream()
                        .filter(tie -> !event.goesOn(tie))
                        .map(tie -> views.line(tie, "/cards/" + tie.id(), Words.say(event, "page-desk.look")))
                        .toList());
    }

    /** Captains enter and see cards of their own ties only. */
    private static void mayEnter(Visit visit, Tie tie) {
        if (visit.role() == Role.CAPTAIN && !tie.has(visit.club())) {
            throw new ClosedDoor(Door.CARDS);
        }
    }

    private static void enter(Visit visit, boolean correcting) {
        Tie tie = visit.tie();
        mayEnter(visit, tie);
        RubberNo rubber = visit.rubber();
        Form form = correcting ? SettleScreen.chosen(visit, visit.form()) : visit.form();
        How how = How.parse(form.text("how")).orElse(How.PLAYED);
        List<Score> games = CardFields.games(visit.event(), form, how);
        String reason = correcting ? form.mustText("reason") : "";
        Decision decision = correcting
                ? new CorrectCard(tie.id(), rubber, games, how, reason, ByRuling.chosen(form))
                : new RecordCard(tie.id(), rubber, games, how);
        Correction asked = new Correction(tie.id(), rubber, games, how);
        boolean once = form.isTicked("confirmed");
        boolean first = !once || form.has(SettleScreen.ENTRY);
        if (form.isClean() && correcting && first && goesToRuling(visit, asked, decision)) {
            visit.go(Addresses.correction(tie, rubber) + "?" + CardFields.query(visit.event(), form));
            return;
        }
        if (!once && isReadBack(visit, form, decision, correcting)) {
            return;
        }
        String next = !correcting && differs(tie.card(rubber), games) ? here(tie, rubber) : next(visit, tie);
        visit.attempt(form, () -> decision, next, tried -> again(visit, correcting, tried));
    }

    /** Another reading stands there: whoever typed this one stays at the card and reads what happens now. */
    private static boolean differs(Card card, List<Score> games) {
        return card.inForce().stream().anyMatch(entry -> !entry.games().equals(games));
    }

    private static String here(Tie tie, RubberNo rubber) {
        return "/cards/" + tie.id() + "/" + rubber;
    }

    /** The page of which the form came: the two readings, or the numbers. */
    private static Screen again(Visit visit, boolean correcting, Tried tried) {
        return correcting && tried.typed().has(SettleScreen.ENTRY)
                ? new SettleScreen(visit, tried).screen(next(visit, visit.tie()))
                : form(visit, correcting, tried);
    }

    /** What was typed can stand, and is shown to be confirmed. */
    private static boolean isReadBack(Visit visit, Form form, Decision decision, boolean correcting) {
        if (form.isClean()) {
            visit.wouldRefuse(decision).forEach(form::fault);
        }
        if (form.isClean()) {
            visit.show(form(visit, correcting, Tried.again(form)));
            return true;
        }
        return false;
    }

    /** This person may decide what becomes of the score, and it needs deciding. */
    private static boolean goesToRuling(Visit visit, Correction correction, Decision decision) {
        return Door.OFFICIALS.opensFor(visit.role()) && (isBuiltOn(visit, correction) || isSigned(visit, decision));
    }

    /** Others have gone on from the score. */
    private static boolean isBuiltOn(Visit visit, Correction correction) {
        return visit.ask(DisputeAnswers::new).faults(correction).isEmpty()
                && visit.ask(DisputeAnswers::new)
                        .impact(correction, CorrectionChoice.REPLAY)
                        .reachesOthers();
    }

    /** The table was signed over it: who may rule goes where the ruling is given, with the score that was typed. */
    private static boolean isSigned(Visit visit, Decision decision) {
        return visit.wouldRefuse(decision).stream()
                .anyMatch(refusal -> refusal.code().equals("desk.table-is-signed"));
    }

    /** Back to where one came from: the court of the board, or the card of the tie. */
    private static String next(Visit visit, Tie tie) {
        if (visit.role() == Role.CAPTAIN) {
            return "/tie/" + tie.id();
        }
        boolean fromBoard = Door.DESK.opensFor(visit.role()) && tie.calls().containsKey(visit.rubber());
        return fromBoard ? DeskPage.HERE : "/cards/" + tie.id();
    }

    private static TieCardsView cards(Visit visit, Tie tie) {
        mayEnter(visit, tie);
        return new TieCards(visit, tie).view();
    }

    private static Screen form(Visit visit, boolean correcting, Tried tried) {
        Tie tie = visit.tie();
        mayEnter(visit, tie);
        boolean held = tie.card(visit.rubber()).standing() == Card.Standing.HELD;
        if (correcting && held && tried.isNothing() && visit.ctx().queryParam(SettleScreen.TYPED) == null) {
            return new SettleScreen(visit, tried).screen(next(visit, tie));
        }
        return new CardScreen(visit, tie, tried).screen(correcting, next(visit, tie));
    }
}
