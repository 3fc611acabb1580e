package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Saying;

/**
 * An official signs the final standings, by name: every table signed, every tie of the knockout finished. The order goes out in
 * a numbered notice, each place with its reason as it stands now.
 *
 * @param by who signs, as it will be printed
 */
public record SignEvent(String by) implements Decision {
    /** The code of its notice. */
    public static final String NOTICE = "notices.final-order";

    /** The part of what it says that holds the places, champion first. */
    public static final String PLACES = "places";

    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = Asked.byOfficial(given).text("by", by, Asked.SHORT).all(FinalPlacing.unfinished(event));
        event.signed()
                .ifPresent(signed -> asked.all(
                        List.of(Refusal.of("desk.event-signed-already").with("by", signed.by()))));
        return asked.isFine()
                ? Accepted.of(new OfficialFact.EventSigned(FinalPlacing.of(event), by.strip()), notice(event))
                : asked.refused();
    }

    private OfficialFact.NoticeStated notice(Event event) {
        return new OfficialFact.NoticeStated(
                Numbers.notice(event),
                Saying.of(NOTICE),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Saying.of("notices.final-places").with(PLACES, FinalPlacing.said(event))),
                Saying.of("notices.signed-by").with("by", by.strip()));
    }
}
