package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PrivateNote;
import tiewright.event.Side;
import tiewright.event.Tie;

/** Sealed sheets that go back to their captains unseen; what was kept of them is dropped. */
public record GivenBack(List<Fact> facts, List<PrivateNote> notes) {
    public GivenBack {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }

    /** All that is sealed for the tie and not opened, pairs for a decider too: it will not be played so. */
    public static GivenBack of(Event event, Tie tie, String reason) {
        List<PrivateNote.SheetDropped> sealed = new ArrayList<>();
        Stream.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id()))
                .map(event::exchange)
                .filter(exchange -> !exchange.isOpened())
                .forEach(exchange -> Stream.of(Side.values())
                        .filter(side -> exchange.side(side).isIn())
                        .flatMap(side -> tie.club(side).stream())
                        .forEach(club -> sealed.add(new PrivateNote.SheetDropped(exchange.id(), club))));
        return of(sealed, reason);
    }

    /** What {@link Exchanges#unneeded} says. */
    public static GivenBack unneeded(Event before, Event after, String reason) {
        return of(Exchanges.unneeded(before, after), reason);
    }

    private static GivenBack of(List<PrivateNote.SheetDropped> dropped, String reason) {
        return new GivenBack(
                dropped.stream()
                        .map(one -> (Fact) new ExchangeFact.SheetReturned(one.exchange(), one.club(), reason))
                        .toList(),
                List.copyOf(dropped));
    }
}
