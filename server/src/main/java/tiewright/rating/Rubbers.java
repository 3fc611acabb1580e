package tiewright.rating;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.OfRubber;
import tiewright.event.Pair;
import tiewright.event.PrivateNote;

/** Which of some earlier games were one rubber: those of one day that name the same. */
final class Rubbers {
    private record Named(LocalDate date, String match) {}

    /**
     * A rubber that somebody has won.
     *
     * @param bestOf games at most
     * @param homeWon whether the side won it that is home in its last game
     */
    record Ended(int bestOf, boolean homeWon) {}

    private final List<PrivateNote.PastGame> games;
    private final Map<Named, List<Integer>> places = new HashMap<>();

    Rubbers(List<PrivateNote.PastGame> games) {
        this.games = games;
        for (int i = 0; i < games.size(); i++) {
            int place = i;
            named(games.get(i))
                    .ifPresent(rubber -> places.computeIfAbsent(rubber, any -> new ArrayList<>())
                            .add(place));
        }
    }

    private static Optional<Named> named(PrivateNote.PastGame game) {
        return game.rubber().map(rubber -> new Named(game.date(), rubber.match()));
    }

    static Pair home(PrivateNote.PastGame game) {
        return Pair.of(game.home1(), game.home2());
    }

    static Pair away(PrivateNote.PastGame game) {
        return Pair.of(game.away1(), game.away2());
    }

    /** The rubber whose last game, in the order in which they were given, stands at this place; empty where it is not over. */
    Optional<Ended> endedAt(int place) {
        return named(games.get(place))
                .map(rubber -> places.getOrDefault(rubber, List.of()))
                .filter(all -> all.get(all.size() - 1) == place)
                .flatMap(all -> ended(all.stream().map(games::get).toList()));
    }

    /** Empty also where games of other pairs name the same rubber. */
    private static Optional<Ended> ended(List<PrivateNote.PastGame> rubber) {
        PrivateNote.PastGame last = rubber.get(rubber.size() - 1);
        int home = 0;
        for (PrivateNote.PastGame game : rubber) {
            boolean turned = home(game).equals(away(last)) && away(game).equals(home(last));
            if (!turned && !(home(game).equals(home(last)) && away(game).equals(away(last)))) {
                return Optional.empty();
            }
            home += game.score().home() > game.score().away() != turned ? 1 : 0;
        }
        int most = Math.max(home, rubber.size() - home);
        int bestOf = rubber.stream()
                .flatMapToInt(game -> game.rubber().map(OfRubber::bestOf).orElse(OptionalInt.empty()).stream())
                .max()
                .orElse(2 * most - 1);
        boolean over = most > bestOf / 2 && 2 * home != rubber.size();
        return over ? Optional.of(new Ended(bestOf, 2 * home > rubber.size())) : Optional.empty();
    }
}
