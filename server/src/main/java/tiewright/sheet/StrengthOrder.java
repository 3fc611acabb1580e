package tiewright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.RubberKind;
import tiewright.conditions.RubberKinds;
import tiewright.event.RubberNo;

/**
 * How the order of strength binds the pairs of a sheet, for everybody who names, counts or proposes one. The strength of a pair
 * is the sum of its two ranks, 1 the strongest.
 */
public final class StrengthOrder {
    private StrengthOrder() {}

    /** A pair that stands below a weaker one although the conditions forbid it. */
    record Break(RubberNo rubber, int sum, RubberNo above, int sumAbove) {}

    /** The strength of the pair in a rubber. */
    record Strength(RubberNo rubber, int sum) {}

    /**
     * Every pair that breaks the order, top down; only rubbers of one kind are compared.
     *
     * @param pairs top down, without those of which there is none
     */
    static List<Break> breaks(OrderOfStrength order, RubberKinds kinds, List<Strength> pairs) {
        List<Break> breaks = new ArrayList<>();
        for (RubberKind kind : RubberKind.values()) {
            List<Strength> alike = pairs.stream()
                    .filter(pair -> kinds.of(pair.rubber().number()) == kind)
                    .toList();
            for (int i = 1; i < alike.size(); i++) {
                broken(order, kinds, alike.get(comparedWith(order, i)), alike.get(i))
                        .ifPresent(breaks::add);
            }
        }
        breaks.sort(Comparator.comparing(Break::rubber));
        return breaks;
    }

    /** Whether two pairs may stand one above the other in rubbers of one kind, whatever stands between. */
    static Optional<Break> broken(OrderOfStrength order, RubberKinds kinds, Strength above, Strength below) {
        return isBroken(order, kinds.isFirst(above.rubber().number()), above.sum(), below.sum())
                ? Optional.of(new Break(below.rubber(), below.sum(), above.rubber(), above.sum()))
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
     * @param aboveIsTop no rubber of its kind stands above the upper of the two
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
