package tiewright.sheet;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;

/**
 * A ruling forfeits the rubbers of a club that has no sheet after the deadline; at the opening they stand as walkovers.
 *
 * @param by the name of who rules
 */
public record ForfeitSide(ExchangeId exchange, ClubId club, String reason, String by) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons =
                Gate.first(() -> Rulings.whyNot(event, exchange, club, given), () -> Rulings.signed(reason, by));
        return reasons.isEmpty()
                ? new Accepted(
                        Rulings.facts(event, new Rulings.Missing(exchange, club, true), reason, by),
                        List.of(new PrivateNote.SheetDropped(exchange, club)))
                : new Refused(reasons);
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return Sealing.isStaledBy(fact, exchange, club, List.of());
    }
}
