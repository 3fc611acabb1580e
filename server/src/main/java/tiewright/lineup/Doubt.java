package tiewright.lineup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.Pair;

/**
 * How sure is a tie chance? The strengths are drawn many times as they could well be, and the chance is worked out for each
 * draw. The same draws serve every sheet, so that two sheets can be compared.
 */
final class Doubt {
  private static final int DRAWS = 400;
  private static final double TAIL = 0.025;

  private final Board board;
  private final List<Pair> pairs;
  private final double[][] ratings;
  private final EdgeCurve rubber;
  private final EdgeCurve decider;

  Doubt(Board board, List<int[]> lines, long seed) {
    this.board = board;
    Set<Pair> all = new LinkedHashSet<>(board.opponents());
    for (int[] line : lines) {
      Arrays.stream(line).filter(pair -> pair != Board.EMPTY).forEach(pair -> all.add(board.pairs().get(pair)));
      board.levelWorth().deciderPair(line).ifPresent(pair -> all.add(board.pairs().get(pair)));
    }
    board.levelWorth().theirPair().ifPresent(all::add);
    this.pairs = new ArrayList<>(all);
    this.ratings = board.problem().strengths().draws(pairs, DRAWS, seed);
    this.rubber = new EdgeCurve(board.rules().scoring(), board.rules().bestOf());
    this.decider = new EdgeCurve(board.rules().deciderScoring(), 1);
  }

  /** The tie chance of a sheet in each draw. */
  double[] chances(int[] line) {
    int[] ours = Arrays.stream(line).map(pair -> pair == Board.EMPTY ? Board.EMPTY : pairs.indexOf(board.pairs().get(pair))).toArray();
    int[] opponents = board.opponents().stream().mapToInt(pairs::indexOf).toArray();
    double[] chances = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      chances[i] = chance(ours, line, opponents, ratings[i]);
    }
    return chances;
  }

  private double chance(int[] ours, int[] line, int[] opponents, double[] rating) {
    double level = level(line, rating);
    double sum = 0;
    int[][] expected = board.expectedLines();
    for (int i = 0; i < expected.length; i++) {
      double[] rubbers = new double[ours.length];
      int counted = 0;
      for (int r = 0; r < ours.length; r++) {
        int their = expected[i][r];
        if (ours[r] != Board.EMPTY) {
          rubbers[counted++] = their == Board.EMPTY ? 1 : rubber.chance(rating[ours[r]] - rating[opponents[their]]);
        } else if (their != Board.EMPTY) {
          rubbers[counted++] = 0;
        }
      }
      sum += board.weights()[i] * TieOdds.of(Arrays.copyOf(rubbers, counted)).win(level);
    }
    return sum;
  }

  private double level(int[] line, double[] rating) {
    Optional<Integer> ours = board.levelWorth().deciderPair(line);
    Optional<Pair> theirs = board.levelWorth().theirPair();
    if (ours.isEmpty() || theirs.isEmpty()) {
      return board.levelWorth().of(line);
    }
    return decider.chance(rating[pairs.indexOf(board.pairs().get(ours.get()))] - rating[pairs.indexOf(theirs.get())]);
  }

  /** Ends of the 95 % interval of what was drawn. */
  static double low(double[] drawn) {
    return sorted(drawn)[(int) (TAIL * drawn.length)];
  }

  static double high(double[] drawn) {
    return sorted(drawn)[drawn.length - 1 - (int) (TAIL * drawn.length)];
  }

  private static double[] sorted(double[] drawn) {
    double[] sorted = drawn.clone();
    Arrays.sort(sorted);
    return sorted;
  }

  /** In what share of the draws is the first better than the second? Equal ones count half. */
  static double better(double[] first, double[] second) {
    double sum = 0;
    for (int i = 0; i < first.length; i++) {
      sum += first[i] > second[i] ? 1 : first[i] == second[i] ? 0.5 : 0;
    }
    return sum / first.length;
  }
}
