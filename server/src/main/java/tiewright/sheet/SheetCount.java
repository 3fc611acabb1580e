package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tiewright.conditions.Conditions;
import tiewright.conditions.OrderOfStrength;

/**
 * How many sheets a squad can hand in: as full as the squad allows, gaps only at the bottom.
 *
 * @param legal those that also obey the order of strength
 * @param all the same without the order of strength
 */
public record SheetCount(long legal, long all) {

    /** @param ranks place in the order of strength of each player present, 1 the strongest; empty where none is given */
    public static SheetCount of(List<OptionalInt> ranks, Conditions conditions) {
        OrderOfStrength order = conditions.orderOfStrength();
        if (order != OrderOfStrength.NONE && ranks.stream().anyMatch(OptionalInt::isEmpty)) {
            throw new IllegalArgumentException("the order of strength needs a rank for every player");
        }
        return new Counter(ranks, conditions).count();
    }

    private static final class Counter {
        private final List<OptionalInt> ranks;
        private final OrderOfStrength order;
        private final int most;
        private final int pairs;
        private final int[] named;
        private final List<Integer> sums = new ArrayList<>();
        private long legal;
        private long all;

        Counter(List<OptionalInt> ranks, Conditions conditions) {
            this.ranks = ranks;
            this.order = conditions.orderOfStrength();
            this.most = conditions.maxRubbersPerPlayer();
            this.pairs = StrengthOrder.fullest(ranks.size(), most, conditions.rubbers());
            this.named = new int[ranks.size()];
        }

        SheetCount count() {
            fill(0);
            return new SheetCount(legal, all);
        }

        private void fill(int rubber) {
            if (rubber == pairs) {
                all++;
                legal += StrengthOrder.isKept(order, sums) ? 1 : 0;
                return;
            }
            for (int one = 0; one < named.length; one++) {
                for (int other = one + 1; named[one] < most && other < named.length; other++) {
                    if (named[other] < most) {
                        name(one, other, 1);
                        sums.add(ranks.get(one).orElse(0) + ranks.get(other).orElse(0));
                        fill(rubber + 1);
                        sums.remove(sums.size() - 1);
                        name(one, other, -1);
                    }
                }
            }
        }

        private void name(int one, int other, int times) {
            named[one] += times;
            named[other] += times;
        }
    }
}
