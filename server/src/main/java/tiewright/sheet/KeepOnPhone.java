package tiewright.sheet;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;

/**
 * The sheet stays on the captain's phone and only its receipt comes to the desk, which binds the captain all the same. A
 * sheet that lay at the desk before is replaced and dropped.
 *
 * @param receipt SHA-256, 64 lower-case hex digits, as {@link Receipt} makes it
 */
public record KeepOnPhone(ExchangeId exchange, ClubId club, String receipt) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = Gate.first(
                () -> Sealing.whyNot(event, exchange, club, given),
                () -> Gate.when(
                        !Receipt.isReceipt(receipt), Why.RECEIPT.refusal().at("receipt")));
        return reasons.isEmpty()
                ? new Accepted(
                        List.of(new ExchangeFact.SheetSealed(exchange, club, receipt, true)),
                        List.of(new PrivateNote.SheetDropped(exchange, club)))
                : new Refused(reasons);
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return Sealing.isStaledBy(fact, exchange, club, List.of());
    }
}
