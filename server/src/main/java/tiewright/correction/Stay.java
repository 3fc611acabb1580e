package tiewright.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Recorded;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.Tie;

/** Which facts put the record right and leave everybody where they are: clubs stay in their slots by ruling. */
public final class Stay {
    private Stay() {}

    /** The corrected facts, then what keeps the clubs; sheets that nobody needs any more go back unseen. */
    public static Decision.Accepted of(Event before, Decision.Given given, List<? extends Fact> corrected, int ruling) {
        Event after = then(before, given, corrected);
        List<Fact> facts = new ArrayList<>(corrected);
        for (Tie tie : before.ties().values()) {
            for (Side side : Side.values()) {
                if (moves(before, after, tie.slot(side))) {
                    facts.add(
                            new DrawFact.SlotKept(tie.id(), side, tie.club(side).orElseThrow(), ruling));
                }
            }
        }
        facts.addAll(ReturnedSheets.facts(before, after, "ruling " + ruling));
        return new Decision.Accepted(facts, ReturnedSheets.notes(before, after));
    }

    private static boolean moves(Event before, Event after, Slot slot) {
        return slot.club().isPresent()
                && slot.from()
                        .map(from -> Results.of(after, from))
                        .filter(is -> !is.equals(slot.club())
                                && !is.equals(Results.of(before, slot.from().orElseThrow())))
                        .isPresent();
    }

    static Event then(Event event, Decision.Given given, List<? extends Fact> facts) {
        List<Recorded> recorded = new ArrayList<>();
        for (Fact fact : facts) {
            recorded.add(
                    new Recorded(event.seq() + recorded.size() + 1, fact, given.by(), Optional.empty(), given.now()));
        }
        return event.then(recorded);
    }
}
