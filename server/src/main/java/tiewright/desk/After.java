package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.sheet.Exchanges;

/** What follows from facts about to be appended, and is appended with them. */
final class After {
    private After() {}

    static Decision.Accepted accepted(Event event, Decision.Given given, List<? extends Fact> facts) {
        return accepted(event, given, facts, List.of());
    }

    /**
     * The facts, then the slots whose club is certain through them, and the walkovers of a club that withdrew and would
     * have to play there. Those are cards, so only an official's decision brings them. Sheets that nobody will need are
     * dropped unseen.
     */
    static Decision.Accepted accepted(
            Event event, Decision.Given given, List<? extends Fact> facts, List<PrivateNote> notes) {
        List<Fact> all = new ArrayList<>(facts);
        List<Fact> more = follows(event.after(all, given), given);
        while (!more.isEmpty()) {
            all.addAll(more);
            more = follows(event.after(all, given), given);
        }
        List<PrivateNote> kept = new ArrayList<>(notes);
        Exchanges.unneeded(event, event.after(all, given)).stream()
                .filter(drop -> !notes.contains(drop))
                .forEach(kept::add);
        return new Decision.Accepted(all, kept);
    }

    private static List<Fact> follows(Event event, Decision.Given given) {
        List<Fact> facts = new ArrayList<>(SlotFills.of(event));
        if (given.by().role().isOfficial()) {
            Walkovers.waiting(event).forEach(waiting -> facts.addAll(waiting.cards(event)));
        }
        return facts;
    }
}
