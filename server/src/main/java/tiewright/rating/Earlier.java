package tiewright.rating;

import java.util.List;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.PrivateNote;
import tiewright.event.SameGame;

/**
 * What is known besides the cards of the day.
 *
 * @param results final scores of earlier games
 * @param films filmed games, earlier ones and those of the day
 * @param stated what is stated of the assumptions under which all of it is read
 */
public record Earlier(List<PrivateNote.PastGame> results, List<FilmedGame> films, Stated stated) {
    public Earlier {
        results = List.copyOf(results);
        films = List.copyOf(films);
    }

    public Earlier(List<PrivateNote.PastGame> results, List<FilmedGame> films) {
        this(results, films, Stated.nothing());
    }

    public Earlier under(Stated other) {
        return new Earlier(results, films, other);
    }

    public static Earlier of(List<PrivateNote.PastGame> results) {
        return new Earlier(results, List.of());
    }

    /** The games that count for everybody and those that one club keeps for itself; a game on both lists once. */
    public static Earlier of(
            List<PrivateNote.PastGame> common, List<PrivateNote.PastGame> own, List<FilmedGame> films) {
        List<SameGame> known = common.stream().map(SameGame::of).toList();
        return new Earlier(
                Stream.concat(common.stream(), SameGame.beyond(known, own, SameGame::of).stream())
                        .toList(),
                films);
    }

    /** Every game that counts without anything given by a club: on the list for everybody, or on a card of the day. */
    public static List<SameGame> known(Event event, List<PrivateNote.PastGame> common) {
        List<SameGame> listed = common.stream().map(SameGame::of).toList();
        List<SameGame> carded = CardedRubber.of(event).stream()
                .flatMap(rubber -> rubber.same().stream())
                .toList();
        return Stream.concat(listed.stream(), SameGame.beyond(listed, carded, game -> game).stream())
                .toList();
    }
}
