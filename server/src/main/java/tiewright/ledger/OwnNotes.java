package tiewright.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/** Whose note is whose. */
final class OwnNotes {
    private OwnNotes() {}

    /** A captain judges, wishes, promises and marks as hurt the own squad only, and notes nothing else; an official marks for the club. */
    static boolean mayNote(Event event, ClubId club, PrivateNote note) {
        Set<PlayerId> squad = event.squad(club).stream().map(Player::id).collect(Collectors.toSet());
        if (note instanceof PrivateNote.HurtMarked hurt) {
            return squad.contains(hurt.player());
        }
        if (note instanceof PrivateNote.FormJudged form) {
            return squad.contains(form.player());
        }
        if (note instanceof PrivateNote.ChemistryJudged chemistry) {
            return squad.contains(chemistry.pair().first())
                    && squad.contains(chemistry.pair().second());
        }
        if (note instanceof PrivateNote.RubbersPromised promise) {
            return squad.contains(promise.player());
        }
        if (note instanceof PrivateNote.FilmKept film) {
            return film.club().equals(club);
        }
        if (note instanceof PrivateNote.FilmDropped film) {
            return film.club().equals(club);
        }
        if (note instanceof PrivateNote.GamesGiven given) {
            return given.club().equals(club);
        }
        if (note instanceof PrivateNote.GameTakenBack game) {
            return game.club().equals(club);
        }
        if (note instanceof PrivateNote.HalfLifeChosen chosen) {
            return chosen.club().equals(club);
        }
        if (note instanceof PrivateNote.Forecast forecast) {
            return forecast.club().equals(club)
                    && event.tie(forecast.tie()).filter(tie -> tie.has(club)).isPresent();
        }
        return note instanceof PrivateNote.TieWish wish
                && wish.club().equals(club)
                && Stream.of(wish.mustPlay(), wish.mustRest())
                        .flatMap(List::stream)
                        .allMatch(squad::contains);
    }

    /** Those who are no longer in the squad they were in. */
    static Set<PlayerId> left(Event before, Event after) {
        return before.players().values().stream()
                .filter(player -> !after.player(player.id()).map(Player::club).equals(Optional.of(player.club())))
                .map(Player::id)
                .collect(Collectors.toSet());
    }

    /** Clubs that are no longer there. */
    static Set<ClubId> gone(Event before, Event after) {
        return before.clubs().keySet().stream()
                .filter(club -> after.club(club).isEmpty())
                .collect(Collectors.toSet());
    }

    /** The directory with the names that the notes give, in code order. */
    static Directory named(Directory before, Collection<PrivateNote> notes) {
        for (PrivateNote note : notes) {
            if (note instanceof PrivateNote.EverythingErased erased) {
                return erased.kept();
            }
        }
        Map<PlayerId, Directory.Person> people = new HashMap<>();
        notes.forEach(note -> {
            if (note instanceof PrivateNote.PersonNamed named) {
                people.put(named.player(), new Directory.Person(named.name(), named.bornYear()));
            }
        });
        if (people.isEmpty()) {
            return before;
        }
        Map<PlayerId, Directory.Person> all = new TreeMap<>(before.people());
        all.putAll(people);
        return new Directory(all);
    }
}
