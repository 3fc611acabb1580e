package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.RubberNo;

/**
 * How the order of strength binds the pairs of a sheet, for everybody who names, counts or proposes one. The strength of a pair
 * is the sum of its two ranks, 1 the strongest.
 */
public final class StrengthOrder {
    private StrengthOrder() {}

    /** A pair that stands below a weaker one although the conditions forbid it. */
    record Break(RubberNo rubber, int sum, RubberNo above, int sumAbove) {}

    /** Every pair that breaks the order, top down; rubbers without a pair are left out of {@code sums}. */
    static List<Break> breaks(OrderOfStrength order, SortedMap<RubberNo, Integer> sums) {
        List<Map.Entry<RubberNo, Integer>> rubbers = List.copyOf(sums.entrySet());
        List<Break> breaks = new ArrayList<>();
        for (int i = 1; i < rubbers.size(); i++) {
            Map.Entry<RubberNo, Integer> above = rubbers.get(comparedWith(order, i));
            Map.Entry<RubberNo, Integer> rubber = rubbers.get(i);
            broken(order, above.getKey(), above.getValue(), rubber.getKey(), rubber.getValue())
                    .ifPresent(breaks::add);
        }
        return breaks;
    }

    /** Whether two pairs may stand in these rubbers, one above the other, whatever stands between. */
    static Optional<Break> broken(OrderOfStrength order, RubberNo above, int sumAbove, RubberNo below, int sum) {
        return isBroken(order, above.number() == 1, sumAbove, sum)
                ? Optional.of(new Break(below, sum, above, sumAbove))
                : Optional.empty();
    }

    /** Whether pairs with these sums, from the top down without a gap, keep the order. */
    public static boolean isKept(OrderOfStrength order, List<Integer> sums) {
        for (int i = 1; i < sums.size(); i++) {
            int above = comparedWith(order, i);
            if (isBroken(order, above == 0, sums.get(above), sums.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** With the strongest pair at the top only, every pair is compared with that one; else with the next above. */
    private static int comparedWith(OrderOfStrength order, int place) {
        return order == OrderOfStrength.STRONGEST_FIRST ? 0 : place - 1;
    }

    /**
     * Whether two pairs stand the wrong way round.
     *
     * @param aboveIsTop the upper of the two stands in rubber 1
     */
    public static boolean isBroken(OrderOfStrength order, boolean aboveIsTop, int sumAbove, int sum) {
        return switch (order) {
            case NONE -> false;
            case RANK_SUM -> sum < sumAbove;
            case STRONGEST_FIRST -> aboveIsTop && sum < sumAbove;
        };
    }

    /** Pairs that can be named at once when each player may stand in at most {@code most} of them. */
    public static int fullest(int players, int most, int rubbers) {
        return players < 2 ? 0 : Math.min(rubbers, players * most / 2);
    }
}
