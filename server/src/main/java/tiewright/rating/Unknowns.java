package tiewright.rating;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

/**
 * The numbers that the evidence is about, in a fixed order: forms first, then the extras of pairs that have played, then
 * how much serving is worth in each kind of scoring that was filmed.
 */
final class Unknowns {
    private final Prior prior;
    private final Map<PlayerId, Integer> players = new LinkedHashMap<>();
    private final Map<Pair, Integer> pairs = new LinkedHashMap<>();
    private final Map<Format.Kind, Integer> serves = new LinkedHashMap<>();

    private Unknowns(Prior prior) {
        this.prior = prior;
    }

    static Unknowns of(Prior prior, Evidence evidence) {
        Unknowns unknowns = new Unknowns(prior);
        Set<PlayerId> names =
                new LinkedHashSet<>(prior.forms().keySet().stream().sorted().toList());
        Set<Pair> played = new LinkedHashSet<>();
        Stream.concat(
                        evidence.games().stream().flatMap(game -> Stream.of(game.home(), game.away())),
                        evidence.films().stream().flatMap(film -> Stream.of(film.one(), film.two())))
                .forEach(pair -> {
                    names.add(pair.first());
                    names.add(pair.second());
                    played.add(pair);
                });
        names.forEach(name -> unknowns.players.put(name, unknowns.size()));
        played.forEach(pair -> unknowns.pairs.put(pair, unknowns.size()));
        evidence.films()
                .forEach(film -> unknowns.serves.computeIfAbsent(film.format().kind(), kind -> unknowns.size()));
        return unknowns;
    }

    List<Estimate> priors() {
        List<Estimate> estimates = new ArrayList<>();
        players.keySet().forEach(player -> estimates.add(prior.form(player)));
        pairs.keySet().forEach(pair -> estimates.add(prior.extra(pair)));
        serves.keySet().forEach(kind -> estimates.add(Prior.SERVE));
        return estimates;
    }

    /** A final score: it depends on the edge alone. */
    Observation observed(PastGame game, Likelihood says) {
        return new Observation(edge(game.home(), game.away(), 0), weights(0), says);
    }

    /** Rallies that one pair served: they depend on its edge and on what serving is worth. */
    Observation observed(Pair serving, Pair receiving, Format.Kind kind, Likelihood says) {
        int[] at = edge(serving, receiving, 1);
        at[6] = of(kind).orElseThrow();
        return new Observation(at, weights(1), says);
    }

    private int[] edge(Pair one, Pair other, int more) {
        int[] at = new int[6 + more];
        at[0] = of(one.first()).orElseThrow();
        at[1] = of(one.second()).orElseThrow();
        at[2] = of(one).orElseThrow();
        at[3] = of(other.first()).orElseThrow();
        at[4] = of(other.second()).orElseThrow();
        at[5] = of(other).orElseThrow();
        return at;
    }

    private static double[] weights(int more) {
        return more == 0 ? new double[] {0.5, 0.5, 1, -0.5, -0.5, -1} : new double[] {0.5, 0.5, 1, -0.5, -0.5, -1, 1};
    }

    OptionalInt of(PlayerId player) {
        return index(players.get(player));
    }

    OptionalInt of(Pair pair) {
        return index(pairs.get(pair));
    }

    OptionalInt of(Format.Kind kind) {
        return index(serves.get(kind));
    }

    private static OptionalInt index(@org.jspecify.annotations.Nullable Integer index) {
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    int size() {
        return players.size() + pairs.size() + serves.size();
    }

    Prior prior() {
        return prior;
    }
}
