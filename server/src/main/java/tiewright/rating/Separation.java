package tiewright.rating;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/**
 * Can a pair be told apart into the forms of its players and its extra?
 *
 * <p>Each pair that played is one equation, mean form of its two players = how strong the pair was. The leverage of a pair
 * in these equations, weighted by how much was seen of each, is the share of its strength that the forms alone can take on:
 * 1 means that the extra is whatever the prior says (D. Hoaglin and R. Welsch, The American Statistician 32, 1978, from
 * memory). It is 1 for players with no other partner, and in a ring of three.
 */
final class Separation {
    /** From here on next to nothing is left for the extra (assumption of ours, no source). */
    static final double TIED = 0.95;

    private static final double RIDGE = 1e-9;

    private final Map<Pair, Double> leverage = new HashMap<>();
    private final Map<PlayerId, Set<PlayerId>> partners = new HashMap<>();

    private Separation() {}

    static Separation of(Evidence evidence) {
        Separation separation = new Separation();
        Map<Pair, Double> seen = new LinkedHashMap<>();
        evidence.games().forEach(game -> {
            separation.see(game.home(), SCORE, seen);
            separation.see(game.away(), SCORE, seen);
        });
        evidence.films().forEach(film -> {
            separation.see(film.one(), film.rallies(), seen);
            separation.see(film.two(), film.rallies(), seen);
        });
        separation.work(seen);
        return separation;
    }

    /** A final score tells of the edge nearly as much as its rallies would: the chain has 37 in side-out to 11, 26 in rally scoring to 15. */
    private static final double SCORE = 30;

    private void see(Pair pair, double rallies, Map<Pair, Double> seen) {
        seen.merge(pair, rallies, Double::sum);
        partners.computeIfAbsent(pair.first(), any -> new LinkedHashSet<>()).add(pair.second());
        partners.computeIfAbsent(pair.second(), any -> new LinkedHashSet<>()).add(pair.first());
    }

    private static int[] places(Map<PlayerId, Integer> index, Pair pair) {
        return pair.players().stream()
                .mapToInt(player -> Objects.requireNonNull(index.get(player)))
                .toArray();
    }

    private void work(Map<Pair, Double> seen) {
        Map<PlayerId, Integer> index = new LinkedHashMap<>();
        partners.keySet().forEach(player -> index.put(player, index.size()));
        double most =
                seen.values().stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double[] ridge = new double[index.size()];
        Arrays.fill(ridge, RIDGE * most);
        Precision.Builder equations = new Precision.Builder(ridge);
        double[] halves = {0.5, 0.5};
        seen.forEach((pair, weight) -> equations.add(places(index, pair), halves, weight));
        Precision solved = equations.factored();
        seen.forEach((pair, weight) -> {
            double[] row = new double[index.size()];
            for (int place : places(index, pair)) {
                row[place] = 0.5;
            }
            leverage.put(
                    pair,
                    weight
                            * Arrays.stream(solved.half(row))
                                    .map(each -> each * each)
                                    .sum());
        });
    }

    /** One of the two has played with nobody else. */
    boolean isOnlyEver(Pair pair) {
        return partners.getOrDefault(pair.first(), Set.of()).size() == 1
                || partners.getOrDefault(pair.second(), Set.of()).size() == 1;
    }

    /** Forms and extra of the pair cannot be told apart, or hardly; a pair that never played is no question. */
    boolean isTied(Pair pair) {
        return leverage.containsKey(pair) && (isOnlyEver(pair) || leverage.get(pair) > TIED);
    }
}
