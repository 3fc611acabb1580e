package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;

/** What follows from facts of this room that can end a tie: filled slots, and decider sheets that nobody needs any more. */
final class Consequences {
    private Consequences() {}

    static Decision.Accepted of(Event event, Decision.Given given, List<Fact> facts, List<PrivateNote> notes) {
        List<Fact> all = new ArrayList<>(facts);
        all.addAll(SlotFills.after(event, given, facts));
        List<PrivateNote> kept = new ArrayList<>(notes);
        List<PrivateNote.SheetDropped> before = Exchanges.toDrop(event);
        Exchanges.toDrop(after(event, given, facts)).stream()
                .filter(drop -> !before.contains(drop) && !notes.contains(drop))
                .forEach(kept::add);
        return new Decision.Accepted(all, kept);
    }

    static Event after(Event event, Decision.Given given, List<Fact> facts) {
        List<Recorded> recorded = new ArrayList<>();
        for (Fact fact : facts) {
            recorded.add(
                    new Recorded(event.seq() + recorded.size() + 1, fact, given.by(), Optional.empty(), given.now()));
        }
        return event.then(recorded);
    }
}
