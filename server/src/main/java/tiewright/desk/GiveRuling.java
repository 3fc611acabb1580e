package tiewright.desk;

import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;

/**
 * An official decides something and signs for it. It gets the next number, by which corrections name it.
 *
 * @param about what it concerns, in the official's words
 * @param by who signs, as it will be printed
 */
public record GiveRuling(String about, String ruling, String reason, String by) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = Asked.byOfficial(given)
                .text("about", about, Asked.LONG)
                .text("ruling", ruling, Asked.LONG)
                .text("reason", reason, Asked.LONG)
                .text("by", by, Asked.SHORT);
        return asked.isFine()
                ? Accepted.of(new OfficialFact.RulingGiven(
                        Numbers.ruling(event), about.strip(), ruling.strip(), reason.strip(), by.strip()))
                : asked.refused();
    }
}
