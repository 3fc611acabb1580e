package tiewright.film;

import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.FilmDropped;

/**
 * A captain no longer wants the notes of filmed games. One that is gone already needs nothing more.
 *
 * @param game its code; empty: every game
 */
public record DropFilm(Optional<String> game) implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptain(event, noted, by)
                .kept(() -> noted.films().stream()
                        .filter(film -> game.isEmpty() || film.game().equals(game.get()))
                        .map(film -> new FilmDropped(noted.club(), film.game()))
                        .toList());
    }
}
