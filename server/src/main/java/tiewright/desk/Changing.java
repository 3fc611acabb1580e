package tiewright.desk;

import java.util.List;
import java.util.OptionalInt;
import tiewright.event.Card;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** What every change of an entered card has to keep to. */
final class Changing {
    private final Event event;
    private final Decision.Given given;
    private final String reason;
    private final OptionalInt ruling;

    /** @param ruling the ruling that was chosen for it to rest on, if any */
    Changing(Event event, Decision.Given given, String reason, OptionalInt ruling) {
        this.event = event;
        this.given = given;
        this.reason = reason;
        this.ruling = ruling;
    }

    /** An official, a reason, something entered that can be changed, and a third person where two entries differ. */
    Asked asked(Tie tie, RubberNo rubber) {
        Card card = tie.card(rubber);
        Asked asked = Asked.byOfficial(given)
                .text("reason", reason, Asked.LONG)
                .unless(
                        card.standing() != Card.Standing.EMPTY,
                        Refusal.of("desk.nothing-entered")
                                .with("tie", tie.id())
                                .with("rubber", rubber)
                                .at("rubber"));
        if (ruling.isEmpty()) {
            asked.all(Signed.because(event, tie));
        }
        asked.unless(
                ruling.isEmpty() || wasGiven(ruling.getAsInt()),
                Refusal.of("desk.no-such-ruling")
                        .with("ruling", ruling.orElse(0))
                        .at("by-ruling"));
        return asked.unless(
                !isOneOfTwo(card, given),
                Refusal.of("desk.third-person").with("name", given.by().name()));
    }

    private boolean wasGiven(int number) {
        return event.rulings().stream().anyMatch(given -> given.number() == number);
    }

    /** Who entered one of two readings that differ does not settle them. */
    static List<Refusal> thirdPerson(Event event, Decision.Given given, TieId tie, RubberNo rubber) {
        boolean oneOfTwo = event.tie(tie)
                .filter(found -> isOneOfTwo(found.card(rubber), given))
                .isPresent();
        return oneOfTwo
                ? List.of(
                        Refusal.of("desk.third-person").with("name", given.by().name()))
                : List.of();
    }

    /** One of two different sources that differ. Whoever entered both readings may put it right alone. */
    private static boolean isOneOfTwo(Card card, Decision.Given given) {
        if (card.standing() != Card.Standing.HELD) {
            return false;
        }
        List<Card.Entry> entries = card.inForce();
        boolean twoSources = entries.stream()
                .anyMatch(entry -> !entry.by().isSameSourceAs(entries.get(0).by()));
        return twoSources && entries.stream().anyMatch(entry -> entry.by().isSameSourceAs(given.by()));
    }

    Decision.Outcome outcome(Asked asked, List<Fact> facts) {
        if (ruling.isEmpty()) {
            asked.all(Signed.playedOn(event, given, facts)).all(Signed.moved(event, given, facts));
        }
        return asked.isFine() ? After.accepted(event, given, facts) : asked.refused();
    }
}
