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
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/** Whose note is whose. */
final class OwnNotes {
    private OwnNotes() {}

    /** Whose note it is; empty where it is no club's, or of players who are in no squad or in two. */
    static Optional<ClubId> club(Event event, PrivateNote note) {
        return switch (note.kind()) {
            case HURT_MARKED -> squad(event, ((PrivateNote.HurtMarked) note).player());
            case FORM_JUDGED -> squad(event, ((PrivateNote.FormJudged) note).player());
            case CHEMISTRY_JUDGED -> squad(event, ((PrivateNote.ChemistryJudged) note).pair());
            case RUBBERS_PROMISED -> squad(event, ((PrivateNote.RubbersPromised) note).player());
            case TIE_WISH -> Optional.of(((PrivateNote.TieWish) note).club());
            case PLAYER_WISHED -> Optional.of(((PrivateNote.PlayerWished) note).club());
            case HALF_LIFE_CHOSEN -> Optional.of(((PrivateNote.HalfLifeChosen) note).club());
            case FORECAST -> Optional.of(((PrivateNote.Forecast) note).club());
            case PLAYER_FORGOTTEN -> Optional.of(((PrivateNote.PlayerForgotten) note).club());
            case FILM_KEPT -> Optional.of(((PrivateNote.FilmKept) note).club());
            case FILM_DROPPED -> Optional.of(((PrivateNote.FilmDropped) note).club());
            case GAME_GIVEN -> Optional.of(((PrivateNote.GameGiven) note).club());
            case GAME_TAKEN_BACK -> Optional.of(((PrivateNote.GameTakenBack) note).club());
            case PERSON_NAMED, EVERYTHING_ERASED, SHEET_KEPT, SHEET_DROPPED, PAST_GAME -> Optional.empty();
        };
    }

    private static Optional<ClubId> squad(Event event, PlayerId player) {
        return event.player(player).map(Player::club);
    }

    private static Optional<ClubId> squad(Event event, Pair pair) {
        return squad(event, pair.first())
                .filter(club -> squad(event, pair.second()).filter(club::equals).isPresent());
    }

    /** A club notes about its own: its squad, its wishes, its film and its games. */
    static boolean mayNote(Event event, ClubId club, PrivateNote note) {
        Set<PlayerId> squad = event.squad(club).stream().map(Player::id).collect(Collectors.toSet());
        return club(event, note).filter(club::equals).isPresent()
                && switch (note.kind()) {
                    case TIE_WISH -> squad.containsAll(players((PrivateNote.TieWish) note));
                    case PLAYER_WISHED -> squad.contains(((PrivateNote.PlayerWished) note).player());
                    case PLAYER_FORGOTTEN -> squad.contains(((PrivateNote.PlayerForgotten) note).player());
                    case FORECAST ->
                        event.tie(((PrivateNote.Forecast) note).tie())
                                .filter(tie -> tie.has(club))
                                .isPresent();
                    case HURT_MARKED,
                            FORM_JUDGED,
                            CHEMISTRY_JUDGED,
                            RUBBERS_PROMISED,
                            HALF_LIFE_CHOSEN,
                            FILM_KEPT,
                            FILM_DROPPED,
                            GAME_GIVEN,
                            GAME_TAKEN_BACK -> true;
                    case PERSON_NAMED, EVERYTHING_ERASED, SHEET_KEPT, SHEET_DROPPED, PAST_GAME -> false;
                };
    }

    private static List<PlayerId> players(PrivateNote.TieWish wish) {
        return Stream.of(wish.mustPlay(), wish.mustRest()).flatMap(List::stream).toList();
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
                people.put(named.player(), named.person());
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
