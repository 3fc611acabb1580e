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

/** The numbers that the games are about, in a fixed order: forms first, then the extras of pairs that have played. */
final class Unknowns {
  private final Prior prior;
  private final Map<PlayerId, Integer> players = new LinkedHashMap<>();
  private final Map<Pair, Integer> pairs = new LinkedHashMap<>();

  private Unknowns(Prior prior) {
    this.prior = prior;
  }

  static Unknowns of(Prior prior, List<PastGame> games) {
    Unknowns unknowns = new Unknowns(prior);
    Set<PlayerId> names = new LinkedHashSet<>(prior.forms().keySet().stream().sorted().toList());
    Set<Pair> played = new LinkedHashSet<>();
    for (PastGame game : games) {
      Stream.of(game.home(), game.away()).forEach(pair -> {
        names.add(pair.first());
        names.add(pair.second());
        played.add(pair);
      });
    }
    names.forEach(name -> unknowns.players.put(name, unknowns.players.size()));
    played.forEach(pair -> unknowns.pairs.put(pair, unknowns.players.size() + unknowns.pairs.size()));
    return unknowns;
  }

  /** A number and how much of it is in a sum. */
  record Part(int index, double weight) {}

  List<Estimate> priors() {
    List<Estimate> estimates = new ArrayList<>();
    players.keySet().forEach(player -> estimates.add(prior.form(player)));
    pairs.keySet().forEach(pair -> estimates.add(prior.extra(pair)));
    return estimates;
  }

  double edge(PastGame game, double[] at) {
    return parts(game).stream().mapToDouble(part -> part.weight() * at[part.index()]).sum();
  }

  List<Part> parts(PastGame game) {
    return Stream.concat(
            parts(game.home()).stream(),
            parts(game.away()).stream().map(part -> new Part(part.index(), -part.weight())))
        .toList();
  }

  private List<Part> parts(Pair pair) {
    return List.of(
        new Part(players.get(pair.first()), 0.5), new Part(players.get(pair.second()), 0.5), new Part(pairs.get(pair), 1));
  }

  OptionalInt of(PlayerId player) {
    Integer index = players.get(player);
    return index == null ? OptionalInt.empty() : OptionalInt.of(index);
  }

  OptionalInt of(Pair pair) {
    Integer index = pairs.get(pair);
    return index == null ? OptionalInt.empty() : OptionalInt.of(index);
  }

  int size() {
    return players.size() + pairs.size();
  }

  Prior prior() {
    return prior;
  }
}
