package tiewright.film;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.Refusal;

/**
 * A captain keeps what was noted from film, all games of it or none.
 *
 * @param games those of a code that is kept already take the place of what is kept
 * @param was of one game that was typed: under which code it is kept already, so that it does not take the place of another one by
 *     mistake; empty text where it is new. Empty where whole files were given
 */
public record KeepFilm(List<FilmKept> games, Optional<String> was) implements PrivateDecision {
    public static final int MOST = 200;

    public KeepFilm {
        games = List.copyOf(games);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        Set<String> kept = noted.films().stream().map(FilmKept::game).collect(Collectors.toSet());
        Set<String> all =
                Stream.concat(kept.stream(), games.stream().map(FilmKept::game)).collect(Collectors.toSet());
        NoteChecks checks = NoteChecks.byCaptain(event, noted, by)
                .refuseIf(
                        all.size() > MOST,
                        Refusal.of("notes.film-too-many")
                                .with("most", MOST)
                                .at(was.isPresent() ? "game" : "games.csv"));
        games.stream()
                .map(FilmKept::game)
                .filter(game -> was.filter(before -> !before.equals(game)).isPresent() && kept.contains(game))
                .forEach(game -> checks.refuseIf(
                        true, Refusal.of("notes.film-there").with("game", game).at("game")));
        return checks.kept(() -> games);
    }

    /** Says nothing of what was noted: what is printed or logged by mistake stays with the club. */
    @Override
    public String toString() {
        return "KeepFilm[]";
    }
}
