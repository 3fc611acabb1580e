package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.correction.Impact;
import tiewright.event.CorrectionChoice;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberScore;
import tiewright.event.Saying;

/**
 * An official decides what becomes of a wrong score that others have built on: a ruling, its notice, and what follows,
 * all at once or nothing. Deciding the same again changes nothing more.
 *
 * @param seen the fingerprint of the list of consequences that the official saw; empty = none was asked for
 * @param reason what the card shows, and how it was found
 * @param by who rules, as it will be printed
 */
public record DecideCorrection(Correction correction, CorrectionChoice choice, String seen, String reason, String by)
        implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> faults = correction.faults(event);
        Asked asked = new Asked()
                .unless(mayRule(given), Refusal.of("desk.rulers-only"))
                .text("reason", reason, Asked.LONG)
                .text("by", by, Asked.SHORT)
                .all(faults);
        if (!faults.isEmpty()) {
            return asked.refused();
        }
        Optional<OfficialFact.CorrectionDecided> already = already(event);
        already.ifPresent(decided ->
                asked.unless(false, Refusal.of("desk.decided-already").with("ruling", decided.ruling())));
        if (already.isEmpty()) {
            asked.unless(
                    !correction.standsAlready(event),
                    Refusal.of("desk.stands-so-already").at("games"));
            asked.all(Changing.thirdPerson(event, given, correction.tie(), correction.rubber()));
            asked.all(changed(event, given));
        }
        return asked.isFine() ? accepted(event, given) : asked.refused();
    }

    private static boolean mayRule(Given given) {
        return given.by().role() == Role.REFEREE || given.by().role() == Role.ORGANISER;
    }

    /** The last decision about this rubber says the same, and nothing was entered since. */
    private Optional<OfficialFact.CorrectionDecided> already(Event event) {
        return event.disputes().corrections().stream()
                .filter(one ->
                        one.tie().equals(correction.tie()) && one.rubber().equals(correction.rubber()))
                .reduce((earlier, later) -> later)
                .filter(last ->
                        new RubberScore(last.rubber(), last.games(), last.how()).equals(correction.score(event)))
                .filter(last -> last.choice() == choice || last.choice() != CorrectionChoice.LET_STAND)
                .filter(last -> last.choice() == CorrectionChoice.LET_STAND || correction.standsAlready(event));
    }

    private List<Refusal> changed(Event event, Given given) {
        boolean same = seen.isEmpty()
                || correction
                        .impact(event, given, CorrectionChoice.REPLAY)
                        .fingerprint()
                        .equals(seen);
        return same ? List.of() : List.of(Refusal.of("desk.impact-changed"));
    }

    private Outcome accepted(Event event, Given given) {
        int number = Numbers.ruling(event);
        RubberScore score = correction.score(event);
        Saying about = about();
        List<Fact> facts = new ArrayList<>();
        facts.add(new OfficialFact.RulingStated(number, about, ruled(score), reason.strip(), by.strip()));
        facts.add(new OfficialFact.CorrectionDecided(
                correction.tie(), correction.rubber(), score.games(), score.how(), choice, number, reason.strip()));
        Event ruled = event.after(facts, given);
        Accepted follows =
                correction.followed(ruled, given, choice, new Correction.Ruled(number, reason.strip(), by.strip()));
        facts.addAll(follows.facts());
        facts.add(notice(event, event.after(facts, given), score, number));
        return new Accepted(facts, follows.notes());
    }

    private Saying about() {
        return Saying.of(correction.rubber().isDecider() ? "notices.score-of-decider" : "notices.score-of-rubber")
                .with("tie", correction.tie())
                .with("rubber", correction.rubber());
    }

    private Saying ruled(RubberScore score) {
        return Saying.of("notices.correction-" + choice.code()).with("score", Ruled.score(score));
    }

    private OfficialFact.NoticeStated notice(Event before, Event after, RubberScore score, int ruling) {
        List<Object> again = Impact.between(before, after).of(Impact.Kind.SLOT).stream()
                .map(node -> node.subject().get(0))
                .distinct()
                .toList();
        Saying ruled = choice == CorrectionChoice.REPLAY && !again.isEmpty()
                ? Saying.of("notices.begin-again").with("ruled", ruled(score)).withEach("ties", again)
                : ruled(score);
        Optional<Saying> was = before.tie(correction.tie())
                .flatMap(tie -> tie.card(correction.rubber()).score(correction.rubber()))
                .map(Ruled::score);
        boolean changes = choice != CorrectionChoice.LET_STAND;
        return new OfficialFact.NoticeStated(
                Numbers.notice(before),
                Ruled.notice(about(), ruled, ruling),
                Optional.of(correction.tie()),
                changes ? was : Optional.empty(),
                changes ? Optional.of(Ruled.score(score)) : Optional.empty(),
                Saying.typed(reason.strip()),
                Concerned.between(before, after));
    }

    /** Somebody entered something for this rubber, or decided about it, meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        boolean card = fact instanceof PlayFact.CardEntered entered && isIt(entered.tie(), entered.rubber())
                || fact instanceof PlayFact.CardCorrected corrected && isIt(corrected.tie(), corrected.rubber())
                || fact instanceof PlayFact.CardTakenBack back && isIt(back.tie(), back.rubber());
        return card || fact instanceof OfficialFact.CorrectionDecided decided && isIt(decided.tie(), decided.rubber());
    }

    private boolean isIt(tiewright.event.TieId tie, tiewright.event.RubberNo rubber) {
        return tie.equals(correction.tie()) && rubber.equals(correction.rubber());
    }
}
