package tiewright.lineup;

import java.util.List;
import tiewright.conditions.OrderOfStrength;

/**
 * Does a sheet keep the order of strength?
 *
 * <p>{@code rank-sum}: the sum of the two ranks must not decrease down the sheet. {@code strongest-first}: no pair of the
 * sheet has a smaller sum than the one in rubber 1; the other rubbers are free.
 */
final class RankOrder {
  private RankOrder() {}

  /** @param sums rank sums of the pairs named, rubber 1 first */
  static boolean allows(OrderOfStrength order, List<Integer> sums) {
    for (int rubber = 1; rubber < sums.size(); rubber++) {
      if (breaks(order, 0, sums.get(0), sums.get(rubber)) || breaks(order, rubber - 1, sums.get(rubber - 1), sums.get(rubber))) {
        return false;
      }
    }
    return true;
  }

  /**
   * Do two pairs stand the wrong way round?
   *
   * @param upper rubber of the pair further up, from 0
   */
  static boolean breaks(OrderOfStrength order, int upper, int upperSum, int lowerSum) {
    return switch (order) {
      case NONE -> false;
      case RANK_SUM -> upperSum > lowerSum;
      case STRONGEST_FIRST -> upper == 0 && upperSum > lowerSum;
    };
  }
}
