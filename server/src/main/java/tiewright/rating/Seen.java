package tiewright.rating;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import tiewright.event.Pair;

/**
 * What was seen of a player or a pair.
 *
 * @param games games, filmed or by their score
 * @param rallies rallies on film
 * @param against whom they played, those met most often first
 */
public record Seen(int games, int rallies, List<Opponents> against) {
    /** A pair on the other side. */
    public record Opponents(Pair pair, int games, int rallies) {}

    public Seen {
        against = List.copyOf(against);
    }

    /** Everything in which a pair stood on one side that is asked about. */
    static Seen of(Evidence evidence, Predicate<Pair> asked) {
        Map<Pair, int[]> met = new LinkedHashMap<>();
        evidence.games().forEach(game -> {
            count(met, asked, game.home(), game.away(), 0);
            count(met, asked, game.away(), game.home(), 0);
        });
        evidence.films().forEach(film -> {
            count(met, asked, film.one(), film.two(), film.rallies());
            count(met, asked, film.two(), film.one(), film.rallies());
        });
        List<Opponents> against = new ArrayList<>();
        met.forEach((pair, counts) -> against.add(new Opponents(pair, counts[0], counts[1])));
        against.sort(Comparator.comparingInt(Opponents::rallies)
                .thenComparingInt(Opponents::games)
                .reversed());
        return new Seen(
                against.stream().mapToInt(Opponents::games).sum(),
                against.stream().mapToInt(Opponents::rallies).sum(),
                against);
    }

    private static void count(Map<Pair, int[]> met, Predicate<Pair> asked, Pair own, Pair other, int rallies) {
        if (asked.test(own)) {
            int[] counts = met.computeIfAbsent(other, any -> new int[2]);
            counts[0]++;
            counts[1] += rallies;
        }
    }

    /** How strong the opponents were, game by game, in rallies won per 100 above an even pair; 0 when there were none. */
    public double opponents(Strengths strengths) {
        double sum = 0;
        for (Opponents met : against) {
            sum += met.games() * strengths.meanRating(met.pair());
        }
        return games == 0 ? 0 : sum / games;
    }
}
