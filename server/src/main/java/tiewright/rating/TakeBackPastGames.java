package tiewright.rating;

import java.util.Optional;
import java.util.Set;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.GameTakenBack;

/**
 * A captain takes back earlier games that the own club keeps. One that is gone already needs nothing more.
 *
 * @param numbers of the games; empty: all of them
 */
public record TakeBackPastGames(Optional<Set<Integer>> numbers) implements PrivateDecision {
    public TakeBackPastGames {
        numbers = numbers.map(Set::copyOf);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptain(event, noted, by)
                .kept(() -> noted.games().stream()
                        .filter(kept -> numbers.isEmpty() || numbers.get().contains(kept.number()))
                        .map(kept -> new GameTakenBack(noted.club(), kept.number()))
                        .toList());
    }
}
