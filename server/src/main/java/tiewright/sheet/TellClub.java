package tiewright.sheet;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Refusal;

/**
 * The captain lets the own club's personal links see who plays and who rests, before the opening, or hides it from them again.
 *
 * @param told false: not any more
 */
public record TellClub(ExchangeId exchange, ClubId club, boolean told) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = Gate.first(
                () -> Gate.captainOf(club, given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.unopened(event, exchange),
                () -> state(Gate.stateOf(event, exchange, club)),
                () -> told ? Gate.reads(event, exchange, given) : List.of());
        return reasons.isEmpty() ? Accepted.of(new ExchangeFact.ClubTold(exchange, club, told)) : new Refused(reasons);
    }

    private List<Refusal> state(Exchange.SideOfExchange own) {
        return Gate.first(
                () -> Gate.when(
                        !own.isIn(), Why.NOT_IN.refusal().with("club", club).at("exchange")),
                () -> Gate.when(
                        !own.atDesk(), Why.ON_PHONE.refusal().with("club", club).at("exchange")),
                () -> Gate.when(told && own.told(), Why.ALREADY_TOLD.refusal().at("exchange")),
                () -> Gate.when(!told && !own.told(), Why.NOT_TOLD.refusal().at("exchange")));
    }
}
