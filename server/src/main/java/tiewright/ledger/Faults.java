package tiewright.ledger;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Decision;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;

/** The reasons that only the ledger can know. */
final class Faults {
    private static final int LONGEST_NAME =
            tiewright.schema.Tables.PRIVATE_PERSON.NAME.getDataType().length();

    private Faults() {}

    /** A reason for every text that the tables cannot hold. */
    static List<Refusal> tooLong(Decision.Accepted accepted) {
        List<Refusal> reasons = new ArrayList<>();
        accepted.facts().forEach(fact -> reasons.addAll(FactRows.tooLong(fact)));
        for (PrivateNote note : accepted.notes()) {
            if (note instanceof PrivateNote.PersonNamed named
                    && named.person().name().length() > LONGEST_NAME) {
                reasons.add(Refusal.of("ledger.too-long")
                        .with("longest", LONGEST_NAME)
                        .with("length", named.person().name().length())
                        .at("name"));
            }
        }
        return reasons;
    }

    /** Says first which sheets could not be read, where a decision needed them and refused. */
    static List<Refusal> withUnreadable(List<Decision.SealedRef> unreadable, List<Refusal> reasons) {
        List<Refusal> all = new ArrayList<>();
        unreadable.forEach(where -> all.add(Refusal.of("ledger.sheet-unreadable")
                .with("club", where.club())
                .with("tie", where.exchange().tie())));
        all.addAll(reasons);
        return all;
    }
}
