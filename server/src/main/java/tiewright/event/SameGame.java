package tiewright.event;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import tiewright.scoring.Score;

/**
 * What makes two records one game: the day, the four players by side, and the score; whichever side or partner was written
 * first. The format is not looked at, for people forget it first.
 *
 * @param pair the players of the side whose codes come first, in order
 * @param score that side's points first
 */
public record SameGame(LocalDate date, List<String> pair, List<String> others, Score score) {
    public SameGame {
        pair = List.copyOf(pair);
        others = List.copyOf(others);
    }

    public static SameGame of(PrivateNote.PastGame game) {
        return of(game.date(), List.of(game.home1(), game.home2()), List.of(game.away1(), game.away2()), game.score());
    }

    public static SameGame of(LocalDate date, Pair home, Pair away, Score score) {
        return of(date, codes(home), codes(away), score);
    }

    private static SameGame of(LocalDate date, List<String> home, List<String> away, Score score) {
        List<String> one = home.stream().sorted().toList();
        List<String> other = away.stream().sorted().toList();
        return String.join(",", one).compareTo(String.join(",", other)) <= 0
                ? new SameGame(date, one, other, score)
                : new SameGame(date, other, one, score.swapped());
    }

    private static List<String> codes(Pair pair) {
        return pair.players().stream().map(PlayerId::code).toList();
    }

    /**
     * Those of the games given that are not known yet, in their order. Two alike are two games, for the same four may play to the
     * same score twice a day: as many of them are taken out as are known.
     */
    public static <G> List<G> beyond(Collection<SameGame> known, List<G> given, Function<G, SameGame> same) {
        Map<SameGame, Integer> left = new HashMap<>();
        known.forEach(game -> left.merge(game, 1, Integer::sum));
        return given.stream()
                .filter(game -> left.merge(same.apply(game), -1, Integer::sum) < 0)
                .toList();
    }
}
