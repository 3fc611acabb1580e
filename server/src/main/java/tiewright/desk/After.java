package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.sheet.Exchanges;

/** What follows from facts about to be appended, and is appended with them. */
final class After {
    private After() {}

    /** The event once these facts are in. */
    static Event of(Event event, Decision.Given given, List<? extends Fact> facts) {
        List<Recorded> recorded = new ArrayList<>();
        for (Fact fact : facts) {
            recorded.add(
                    new Recorded(event.seq() + recorded.size() + 1, fact, given.by(), Optional.empty(), given.now()));
        }
        return event.then(recorded);
    }

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
        List<Fact> more = follows(of(event, given, all), given);
        while (!more.isEmpty()) {
            all.addAll(more);
            more = follows(of(event, given, all), given);
        }
        return new Decision.Accepted(all, withDrops(event, of(event, given, all), notes));
    }

    /** Sheets for a decider that will not be played are kept no longer. */
    private static List<PrivateNote> withDrops(Event before, Event after, List<PrivateNote> notes) {
        List<PrivateNote> kept = new ArrayList<>(notes);
        List<PrivateNote.SheetDropped> dropped = Exchanges.toDrop(before);
        Exchanges.toDrop(after).stream()
                .filter(drop -> !dropped.contains(drop) && !notes.contains(drop))
                .forEach(kept::add);
        return kept;
    }

    private static List<Fact> follows(Event event, Decision.Given given) {
        List<Fact> facts = new ArrayList<>(SlotFills.of(event));
        if (given.by().role().isOfficial()) {
            Walkovers.waiting(event).forEach(waiting -> facts.addAll(waiting.cards(event)));
        }
        return facts;
    }
}
