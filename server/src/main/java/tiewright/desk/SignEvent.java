package tiewright.desk;

import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;

/**
 * An official signs the final standings, by name: every table signed, every tie of the knockout finished.
 *
 * @param by who signs, as it will be printed
 */
public record SignEvent(String by) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = Asked.byOfficial(given).text("by", by, Asked.SHORT).all(FinalPlacing.unfinished(event));
        event.signed()
                .ifPresent(signed -> asked.all(
                        List.of(Refusal.of("desk.event-signed-already").with("by", signed.by()))));
        return asked.isFine()
                ? Accepted.of(new OfficialFact.EventSigned(FinalPlacing.of(event), by.strip()))
                : asked.refused();
    }
}
