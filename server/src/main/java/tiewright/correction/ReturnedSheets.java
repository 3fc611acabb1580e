package tiewright.correction;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.sheet.Exchanges;

/** Pairs sealed for a decider that will not be played after all go back unseen. */
final class ReturnedSheets {
    private ReturnedSheets() {}

    static List<PrivateNote> notes(Event before, Event after) {
        return List.copyOf(dropped(before, after));
    }

    static List<Fact> facts(Event before, Event after, String reason) {
        List<Fact> facts = new ArrayList<>();
        dropped(before, after)
                .forEach(drop -> facts.add(new ExchangeFact.SheetReturned(drop.exchange(), drop.club(), reason)));
        return facts;
    }

    private static List<PrivateNote.SheetDropped> dropped(Event before, Event after) {
        List<PrivateNote.SheetDropped> already = Exchanges.toDrop(before);
        return Exchanges.toDrop(after).stream()
                .filter(drop -> !already.contains(drop))
                .toList();
    }
}
