package tiewright.lineup;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.rating.RallyModel;
import tiewright.rating.Strengths;

/**
 * What it is worth to finish the rubbers level.
 *
 * <p>Any two: the chance of our best pair against theirs, which is what this blind game is worth as long as a stronger pair
 * is stronger against everybody. One from each: the best of our pairs whose players stand on the sheet in two different
 * pairs, against their best pair. Singles in turns: the mean forms of those present. No decider: a share of a win.
 */
final class LevelWorth {
  private static final double BARRED = -1; // the captain's wishes leave this pair out

  private final DeciderKind kind;
  private final int[] first; // of each pair, as numbers of players
  private final int[] second;
  private final double[] byPair;
  private final double otherwise;
  private final Optional<Pair> theirs;

  private LevelWorth(DeciderKind kind, List<Pair> pairs, double[] byPair, double otherwise, Optional<Pair> theirs) {
    this.kind = kind;
    List<PlayerId> players = pairs.stream().flatMap(pair -> Stream.of(pair.first(), pair.second())).distinct().toList();
    this.first = pairs.stream().mapToInt(pair -> players.indexOf(pair.first())).toArray();
    this.second = pairs.stream().mapToInt(pair -> players.indexOf(pair.second())).toArray();
    this.byPair = byPair;
    this.otherwise = otherwise;
    this.theirs = theirs;
  }

  static LevelWorth of(LineupProblem problem, List<Pair> pairs) {
    DeciderKind kind = problem.rules().decider();
    if (kind == DeciderKind.NONE) {
      return new LevelWorth(kind, pairs, new double[0], problem.rules().drawWorth(), Optional.empty());
    }
    if (kind == DeciderKind.SINGLES_TURNS) {
      return new LevelWorth(kind, pairs, new double[0], singles(problem), Optional.empty());
    }
    Optional<Pair> best = best(problem.strengths(), DeciderPairs.all(problem.theirs()));
    double[] byPair = new double[pairs.size()];
    Arrays.setAll(
        byPair,
        i -> Wishes.allow(problem, pairs.get(i)) ? best.map(their -> chance(problem, pairs.get(i), their)).orElse(1.0) : BARRED);
    double most = Math.max(0, Arrays.stream(byPair).max().orElse(0));
    return new LevelWorth(kind, pairs, byPair, most, best);
  }

  private static double chance(LineupProblem problem, Pair ours, Pair theirs) {
    return RallyModel.rubberChance(problem.rules().deciderScoring(), 1, problem.strengths().edge(ours, theirs).mean());
  }

  private static double singles(LineupProblem problem) {
    double edge = meanForm(problem.strengths(), problem.ours()) - meanForm(problem.strengths(), problem.theirs());
    return RallyModel.rubberChance(problem.rules().deciderScoring(), 1, edge);
  }

  static double meanForm(Strengths strengths, Squad squad) {
    return squad.present().stream().mapToDouble(member -> strengths.form(member.id()).mean()).average().orElse(0);
  }

  static Optional<Pair> best(Strengths strengths, List<Pair> pairs) {
    return pairs.stream().max(Comparator.comparingDouble((Pair pair) -> strengths.rating(pair).mean()).thenComparing(Comparator.reverseOrder()));
  }

  /** Our chance when the rubbers of this sheet finish level. */
  double of(int[] line) {
    return kind == DeciderKind.ONE_FROM_EACH ? deciderPair(line).map(pair -> byPair[pair]).orElse(0.0) : otherwise;
  }

  /** Who would play the decider after this sheet, as a pair number; empty where no pair is named for it. */
  Optional<Integer> deciderPair(int[] line) {
    if (byPair.length == 0) {
      return Optional.empty();
    }
    int best = Board.EMPTY;
    for (int pair = 0; pair < byPair.length; pair++) {
      boolean allowed = byPair[pair] != BARRED && (kind == DeciderKind.ANY_TWO || isSplit(pair, line));
      if (allowed && (best == Board.EMPTY || byPair[pair] > byPair[best])) {
        best = pair;
      }
    }
    return best == Board.EMPTY ? Optional.empty() : Optional.of(best);
  }

  Optional<Pair> theirPair() {
    return theirs;
  }

  /** Both players stand on the sheet, in two different pairs. */
  private boolean isSplit(int pair, int[] line) {
    boolean one = false;
    boolean other = false;
    for (int named : line) {
      if (named == pair) {
        return false;
      }
      if (named != Board.EMPTY) {
        one |= first[named] == first[pair] || second[named] == first[pair];
        other |= first[named] == second[pair] || second[named] == second[pair];
      }
    }
    return one && other;
  }
}
