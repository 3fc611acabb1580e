package tiewright.sheet;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;

/**
 * Counts sheets of rubbers for which not everybody may be named, rubber by rubber. Players of one rank who play in the same
 * rubbers are alike; so it is enough to know how many of each group were named how often, and what the order of strength
 * compares the next pair of a kind with.
 */
final class KindCounter {
    private static final int MOST_STATES = 600_000;

    private final int most;
    private final OrderOfStrength order;
    private final List<Group> groups = new ArrayList<>();
    private final String start;

    private record Group(Optional<Plays> plays, int rank) {}

    /** A player as a sheet is filled: who plays where, how strong, named how often before. */
    record Standing(Optional<Plays> plays, int rank, int named) {}

    /** @param most rubbers that one player may stand in */
    KindCounter(List<Standing> players, int most, OrderOfStrength order) {
        this.most = most;
        this.order = order;
        players.stream().map(this::group).distinct().forEach(groups::add);
        char[] counts = new char[groups.size() * (most + 1) + RubberKind.values().length];
        players.forEach(player -> counts[place(groups.indexOf(group(player)), player.named())]++);
        this.start = new String(counts);
    }

    /** Where the order is nothing, ranks tell nobody apart. */
    private Group group(Standing player) {
        return new Group(player.plays(), order == OrderOfStrength.NONE ? 0 : player.rank());
    }

    private int place(int group, int times) {
        return group * (most + 1) + times;
    }

    /** Sheets with a pair in each of these rubbers, in this order; empty where there are too many cases to go through. */
    Optional<BigInteger> count(List<RubberKind> rubbers) {
        Map<String, BigInteger> states = Map.of(start, BigInteger.ONE);
        for (RubberKind kind : rubbers) {
            Map<String, BigInteger> next = new HashMap<>();
            states.forEach((state, ways) -> new Naming(kind, state, ways, next).everyPair());
            if (next.size() > MOST_STATES) {
                return Optional.empty();
            }
            states = next;
        }
        return Optional.of(states.values().stream().reduce(BigInteger.ZERO, BigInteger::add));
    }

    /** One more pair from one state, and where that leads. */
    private final class Naming {
        private final RubberKind kind;
        private final String state;
        private final BigInteger ways;
        private final Map<String, BigInteger> to;
        private final int comparedAt;

        Naming(RubberKind kind, String state, BigInteger ways, Map<String, BigInteger> to) {
            this.kind = kind;
            this.state = state;
            this.ways = ways;
            this.to = to;
            this.comparedAt = groups.size() * (most + 1) + kind.ordinal();
        }

        void everyPair() {
            for (int one = 0; one < groups.size(); one++) {
                for (int other = one; other < groups.size(); other++) {
                    int sum = groups.get(one).rank() + groups.get(other).rank();
                    if (kind.admits(groups.get(one).plays(), groups.get(other).plays()) && isInOrder(sum)) {
                        everyTwo(one, other, sum);
                    }
                }
            }
        }

        private boolean isInOrder(int sum) {
            int compared = state.charAt(comparedAt);
            return compared == 0 || !StrengthOrder.isBroken(order, true, compared - 1, sum);
        }

        /** Every two players of these groups, whoever was named how often before. */
        private void everyTwo(int one, int other, int sum) {
            for (int first = 0; first < most; first++) {
                for (int second = one == other ? first : 0; second < most; second++) {
                    name(place(one, first), place(other, second), sum);
                }
            }
        }

        private void name(int one, int other, int sum) {
            long choices = one == other
                    ? state.charAt(one) * (state.charAt(one) - 1L) / 2
                    : (long) state.charAt(one) * state.charAt(other);
            if (choices == 0) {
                return;
            }
            char[] then = state.toCharArray();
            then[one]--;
            then[one + 1]++;
            then[other]--;
            then[other + 1]++;
            boolean isCompared = order == OrderOfStrength.RANK_SUM
                    || (order == OrderOfStrength.STRONGEST_FIRST && then[comparedAt] == 0);
            then[comparedAt] = isCompared ? (char) (sum + 1) : then[comparedAt];
            to.merge(new String(then), ways.multiply(BigInteger.valueOf(choices)), BigInteger::add);
        }
    }
}
