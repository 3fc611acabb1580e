package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;

/** What follows from facts of this room that can end a tie: filled slots, and decider sheets that nobody needs any more. */
final class Consequences {
    private Consequences() {}

    static Decision.Accepted of(Event event, Decision.Given given, List<Fact> facts, List<PrivateNote> notes) {
        List<Fact> all = new ArrayList<>(facts);
        Event after = event.after(facts, given);
        all.addAll(SlotFills.of(after));
        List<PrivateNote> kept = new ArrayList<>(notes);
        Exchanges.unneeded(event, after).stream()
                .filter(drop -> !notes.contains(drop))
                .forEach(kept::add);
        return new Decision.Accepted(all, kept);
    }
}
