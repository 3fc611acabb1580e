package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.Sheet;

/**
 * A ruling supplies a sheet for a club that has none after the deadline, from its paper or as the conditions say; then
 * both can be opened. It has no secret and no receipt: the ruling answers for it.
 *
 * @param by the name of who rules
 */
public record SupplySide(ExchangeId exchange, ClubId club, Sheet sheet, String reason, String by) implements Decision {
    private static final String NO_SECRET = "";

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons =
                Gate.first(() -> Rulings.whyNot(event, exchange, club, given), () -> faults(event, given.directory()));
        return reasons.isEmpty()
                ? new Accepted(
                        Rulings.facts(event, new Rulings.Missing(exchange, club, false), reason, by),
                        List.of(new PrivateNote.SheetKept(exchange, club, sheet, NO_SECRET)))
                : new Refused(reasons);
    }

    private List<Refusal> faults(Event event, Directory directory) {
        List<Refusal> faults = new ArrayList<>(Rulings.signed(reason, by));
        faults.addAll(SheetRules.faults(new SheetOf(event, exchange, club, directory), sheet));
        return faults;
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return Sealing.isStaledBy(fact, exchange, club, sheet.players());
    }

    /** Says nothing of the sheet: what is printed or logged by mistake stays sealed. */
    @Override
    public String toString() {
        return "SupplySide[exchange=" + exchange + ", club=" + club + "]";
    }
}
