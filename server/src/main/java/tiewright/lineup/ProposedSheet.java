package tiewright.lineup;

import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;

/**
 * A legal sheet and what it is worth.
 *
 * @param rank 1 the best; 0 for a sheet that the captain made
 * @param chance to win the tie, best guess: with every strength at its best guess, mean over what the other club may send
 * @param low lower end of the 95 % interval of the chance, from the doubt about the strengths
 * @param high upper end
 * @param cost what it gives away against the best sheet that grants the same wishes, 0 or more
 * @param beatsBest in what share of the plausible strengths it is better than the best one; 0.5 = nobody can tell
 */
public record ProposedSheet(
    int rank, Sheet sheet, List<Line> lines, double chance, double low, double high, double cost, double beatsBest, List<Reason> reasons) {
  public ProposedSheet {
    lines = List.copyOf(lines);
    reasons = List.copyOf(reasons);
  }

  /**
   * One rubber.
   *
   * @param pair empty = nobody
   * @param chance that we win it, mean over what the other club may send; empty = it may not be played, neither club having
   *     a pair
   */
  public record Line(RubberNo rubber, Optional<Pair> pair, Optional<Double> chance) {}
}
