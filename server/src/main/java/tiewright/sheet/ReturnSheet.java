package tiewright.sheet;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;

/** An official sends a sealed sheet back to its captain unseen, for example because its tie is no longer played. */
public record ReturnSheet(ExchangeId exchange, ClubId club, String reason) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = Gate.first(
                () -> Gate.official(given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.when(
                        event.exchange(exchange).isOpened(),
                        Why.OPENED.refusal().with("tie", exchange.tie()).at("exchange")),
                () -> Gate.when(
                        !Gate.stateOf(event, exchange, club).isIn(),
                        Why.NOT_IN.refusal().with("club", club).at("exchange")),
                () -> Gate.reason(reason));
        return reasons.isEmpty()
                ? new Accepted(
                        List.of(new ExchangeFact.SheetReturned(exchange, club, reason.strip())),
                        List.of(new PrivateNote.SheetDropped(exchange, club)))
                : new Refused(reasons);
    }
}
