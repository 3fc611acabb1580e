package tiewright.desk;

import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;

/**
 * A person says how play goes on in heat and signs for it. It is logged with the reading and the tier of the conditions;
 * courts, calls and cards stay as they are.
 *
 * @param by who decides, as the log will show it
 */
public record DecideOnHeat(Heat read, String decision, String by) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = Asked.byOfficial(given)
                .unless(
                        read.isPossible(),
                        Refusal.of("desk.no-such-heat")
                                .with("degrees", read.degrees())
                                .at("degrees"))
                .text("decision", decision, Asked.LONG)
                .text("by", by, Asked.SHORT);
        return asked.isFine()
                ? Accepted.of(new OfficialFact.HeatDecided(
                        read.measure().code(),
                        read.tenths(),
                        read.tier(event.conditions()).code(),
                        decision.strip(),
                        by.strip()))
                : asked.refused();
    }
}
