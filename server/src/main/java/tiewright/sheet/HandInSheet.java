package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.Sheet;

/**
 * The sheet kept on the phone comes to the desk, still sealed: only the very one whose receipt was sent. It was sealed in
 * time, so the clock does not matter here, nor who has gone since.
 */
public record HandInSheet(ExchangeId exchange, ClubId club, Sheet sheet, String secret) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = Gate.first(
                () -> Gate.captainOf(club, given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.unopened(event, exchange),
                () -> onPhone(Gate.stateOf(event, exchange, club)),
                () -> matches(Gate.stateOf(event, exchange, club)),
                () -> SheetRules.faultsOfOrder(new SheetOf(event, exchange, club, given.directory()), sheet));
        return reasons.isEmpty()
                ? new Accepted(
                        List.of(new ExchangeFact.SheetHandedIn(exchange, club)),
                        List.of(new PrivateNote.SheetKept(exchange, club, sheet, secret)))
                : new Refused(reasons);
    }

    private List<Refusal> onPhone(Exchange.SideOfExchange state) {
        List<Refusal> reasons = new ArrayList<>();
        if (state.ruled().isPresent()) {
            reasons.add(Why.RULED.refusal().with("club", club).at("exchange"));
        }
        if (!state.isIn() || state.atDesk()) {
            reasons.add(Why.NOT_ON_PHONE.refusal().at("exchange"));
        }
        return reasons;
    }

    private List<Refusal> matches(Exchange.SideOfExchange state) {
        if (!Receipt.isSecret(secret)) {
            return List.of(Why.SECRET.refusal().at("secret"));
        }
        String receipt = Receipt.of(secret, exchange.tie(), club, sheet);
        return Gate.when(
                state.receipt().filter(receipt::equals).isEmpty(),
                Why.RECEIPT_DIFFERS.refusal().at("sheet"));
    }

    /** Says nothing of the sheet: what is printed or logged by mistake stays sealed. */
    @Override
    public String toString() {
        return "HandInSheet[exchange=" + exchange + ", club=" + club + "]";
    }
}
