package tiewright.sheet;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Refusal;

/** A captain asks that both sheets be opened before the deadline; when the other captain asks too, they are. */
public record AskOpening(ExchangeId exchange, ClubId club) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = Gate.first(
                () -> Gate.captainOf(club, given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.unopened(event, exchange),
                () -> Gate.when(
                        Exchanges.isEarly(event, exchange),
                        Why.NOT_LEVEL.refusal().with("tie", exchange.tie()).at("exchange")),
                () -> state(Gate.stateOf(event, exchange, club)),
                () -> Gate.reads(event, exchange, given));
        return reasons.isEmpty() ? Accepted.of(new ExchangeFact.OpeningAsked(exchange, club)) : new Refused(reasons);
    }

    private List<Refusal> state(Exchange.SideOfExchange own) {
        return Gate.first(
                () -> Gate.when(
                        !own.isIn(), Why.NOT_IN.refusal().with("club", club).at("exchange")),
                () -> Gate.when(own.openingAsked(), Why.ALREADY_ASKED.refusal().at("exchange")));
    }
}
