package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.Sheet;

/**
 * A captain or deputy seals a legal sheet; a later one replaces it until the opening. Only the receipt becomes a fact, the
 * sheet and its secret are kept encrypted.
 *
 * @param secret 64 lower-case hex digits, random, made by whoever sends the sheet
 */
public record SealSheet(ExchangeId exchange, ClubId club, Sheet sheet, String secret) implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons =
                Gate.first(() -> Sealing.whyNot(event, exchange, club, given), () -> faults(event, given.directory()));
        if (!reasons.isEmpty()) {
            return new Refused(reasons);
        }
        String receipt = Receipt.of(secret, exchange.tie(), club, sheet);
        return new Accepted(
                List.of(new ExchangeFact.SheetSealed(exchange, club, receipt, false)),
                List.of(new PrivateNote.SheetKept(exchange, club, sheet, secret)));
    }

    private List<Refusal> faults(Event event, Directory directory) {
        List<Refusal> faults = new ArrayList<>(SheetRules.faults(new SheetOf(event, exchange, club, directory), sheet));
        faults.addAll(Gate.when(!Receipt.isSecret(secret), Why.SECRET.refusal().at("secret")));
        return faults;
    }

    /** What the form was made of: the exchange, the own squad, the conditions, and a sheet the deputy sealed meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return Sealing.isStaledBy(fact, exchange, club, sheet.players());
    }

    /** Says nothing of the sheet: what is printed or logged by mistake stays sealed. */
    @Override
    public String toString() {
        return "SealSheet[exchange=" + exchange + ", club=" + club + "]";
    }
}
