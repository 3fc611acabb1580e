package tiewright.draw;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Counts, exactly, in how many ways the members that are left can be spread over bins at no more than a given cost.
 *
 * <p>One member after another is put into each bin it may enter; states that are equal but for the names of bins and
 * groups are counted once ({@link SpreadState#key()}).
 */
final class Spread {
    /** More states than any event of up to 64 clubs needs, few enough to count in seconds. */
    static final int MOST_STATES = 400_000;

    /** Thrown where the count would take more states than allowed; the entry types turn it into a fault. */
    static final class TooManyCases extends RuntimeException {
        TooManyCases() {
            super("more states than can be counted", null, false, false);
        }
    }

    private final int mostStates;
    private final Map<String, BigInteger> counted = new HashMap<>();

    Spread(int mostStates) {
        this.mostStates = mostStates;
    }

    /** The state with the smallest budget for which there is a way: first the fewest meetings, then the fewest in the wrong half. */
    SpreadState cheapest(SpreadState start) {
        for (int meetings = start.fewestMeetings(); ; meetings++) {
            for (int halves = 0; halves <= start.membersWithAHalf(); halves++) {
                SpreadState state = start.withBudget(meetings, halves);
                if (count(state).signum() > 0) {
                    return state;
                }
            }
        }
    }

    /** The number of ways, every member told apart, places within a bin not. */
    BigInteger count(SpreadState state) {
        if (state.overBudget()) {
            return BigInteger.ZERO;
        }
        if (state.onlyFreeLeft()) {
            return state.waysOfTheFree();
        }
        String key = state.key();
        BigInteger known = counted.get(key);
        if (known != null) {
            return known;
        }
        if (counted.size() >= mostStates) {
            throw new TooManyCases();
        }
        BigInteger ways = countFromNext(state);
        counted.put(key, ways);
        return ways;
    }

    /** Bins that look the same, counted for the first of them. */
    private record Alike(int first, int count) {
        Alike and(Alike other) {
            return new Alike(first, count + other.count);
        }
    }

    private BigInteger countFromNext(SpreadState state) {
        SpreadState.Member next = state.next();
        Map<String, Alike> alike = new LinkedHashMap<>();
        for (int bin = 0; bin < state.bins(); bin++) {
            if (state.allows(next, bin)) {
                alike.merge(state.look(bin), new Alike(bin, 1), Alike::and);
            }
        }
        BigInteger ways = BigInteger.ZERO;
        for (Alike some : alike.values()) {
            BigInteger each = count(state.put(next, some.first()));
            ways = ways.add(each.multiply(BigInteger.valueOf(some.count())));
        }
        return ways;
    }
}
