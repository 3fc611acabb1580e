package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;

/**
 * An official makes a pool's table final, by name, and the clubs take their slots in the knockout. A table whose order a
 * ruling changed since may be signed again.
 *
 * @param by who signs, as it will be printed
 */
public record SignTable(String pool, String by) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        PoolEnd end = PoolEnd.of(event, pool);
        List<ClubId> order = end.table().order();
        Asked asked = Asked.byOfficial(given).text("by", by, Asked.SHORT).all(end.unsignable());
        Objections.open(event, pool)
                .forEach(protest -> asked.unless(
                        false,
                        Refusal.of("desk.protest-open")
                                .with("pool", pool)
                                .with("number", protest.made().number())));
        Optional<OfficialFact.TableSigned> before =
                Optional.ofNullable(event.signedTables().get(pool));
        before.filter(signed -> signed.order().equals(order))
                .ifPresent(signed -> asked.unless(
                        false,
                        Refusal.of("desk.signed-already").with("pool", pool).with("by", signed.by())));
        asked.unless(
                event.signed().isEmpty(), Refusal.of("desk.event-is-signed").with("by", signer(event)));
        return asked.isFine()
                ? After.accepted(event, given, List.of(new OfficialFact.TableSigned(pool, order, by.strip())))
                : asked.refused();
    }

    private static String signer(Event event) {
        return event.signed().map(OfficialFact.EventSigned::by).orElse("");
    }
}
