package tiewright.correction;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.Tie;
import tiewright.sheet.GivenBack;

/** Which facts put the record right and leave everybody where they are: clubs stay in their slots by ruling. */
public final class Stay {
    private Stay() {}

    /** The corrected facts, then what keeps the clubs; sheets that nobody needs any more go back unseen. */
    public static Decision.Accepted of(Event before, Decision.Given given, List<? extends Fact> corrected, int ruling) {
        Event after = before.after(corrected, given);
        List<Fact> facts = new ArrayList<>(corrected);
        for (Tie tie : before.ties().values()) {
            for (Side side : Side.values()) {
                if (moves(before, after, tie.slot(side))) {
                    facts.add(
                            new DrawFact.SlotKept(tie.id(), side, tie.club(side).orElseThrow(), ruling));
                }
            }
        }
        GivenBack unneeded = GivenBack.unneeded(before, after, "ruling " + ruling);
        facts.addAll(unneeded.facts());
        return new Decision.Accepted(facts, unneeded.notes());
    }

    private static boolean moves(Event before, Event after, Slot slot) {
        return slot.club().isPresent()
                && slot.from()
                        .map(from -> Results.of(after, from))
                        .filter(is -> !is.equals(slot.club())
                                && !is.equals(Results.of(before, slot.from().orElseThrow())))
                        .isPresent();
    }
}
