package tiewright.sheet;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Counts sheets without listing them. Only who has been named how often matters for what can follow, and players of one rank
 * are alike; so the pairs are taken sum by sum, and the ways to come to each state are added up. Players of one rank make
 * few states; n players of different ranks make up to 2<sup>n - 1</sup>, which is where it ends.
 */
final class SheetCounter {
    /** About twenty players of different ranks; more take minutes and the memory of a laptop. */
    private static final int MOST_STATES = 600_000;

    /** Two kinds of players, by their place in the list of ranks. */
    private record Kinds(int one, int other) {}

    private final int most;
    private final int pairs;
    private final int mostStates;
    private final NavigableMap<Integer, List<Kinds>> bySum = new TreeMap<>();
    private final String nobodyNamed;

    /** @param pairs how many pairs a sheet has */
    SheetCounter(List<Integer> ranks, int most, int pairs) {
        this(ranks, most, pairs, MOST_STATES);
    }

    /** @param mostStates with more it gives up */
    SheetCounter(List<Integer> ranks, int most, int pairs, int mostStates) {
        this.most = most;
        this.pairs = pairs;
        this.mostStates = mostStates;
        NavigableMap<Integer, Integer> players = new TreeMap<>();
        ranks.forEach(rank -> players.merge(rank, 1, Integer::sum));
        List<Map.Entry<Integer, Integer>> kinds = List.copyOf(players.entrySet());
        char[] start = new char[kinds.size() * (most + 1)];
        for (int one = 0; one < kinds.size(); one++) {
            start[one * (most + 1)] = (char) (int) kinds.get(one).getValue();
            for (int other = one; other < kinds.size(); other++) {
                bySum.computeIfAbsent(kinds.get(one).getKey() + kinds.get(other).getKey(), sum -> new ArrayList<>())
                        .add(new Kinds(one, other));
            }
        }
        this.nobodyNamed = new String(start);
    }

    /** Sheets with the pairs in any order. */
    Optional<BigInteger> inAnyOrder() {
        Ways ways = new Ways();
        return bySum.keySet().stream().allMatch(sum -> ways.add(sum, true))
                ? Optional.of(total(ways.after.get(pairs)))
                : Optional.empty();
    }

    /** Sheets on which the sum of the ranks never falls from one pair to the next. */
    Optional<BigInteger> bySum() {
        Ways ways = new Ways();
        return bySum.keySet().stream().allMatch(sum -> ways.add(sum, false))
                ? Optional.of(total(ways.after.get(pairs)))
                : Optional.empty();
    }

    /** Sheets whose first pair has the smallest sum, or as small a one as any. */
    Optional<BigInteger> strongestFirst() {
        if (pairs == 0) {
            return Optional.of(BigInteger.ONE);
        }
        Ways ways = new Ways();
        BigInteger sheets = BigInteger.ZERO;
        for (int sum : bySum.descendingKeySet()) {
            if (!ways.add(sum, true)) {
                return Optional.empty();
            }
            sheets = sheets.add(total(oneMore(ways.after.get(pairs - 1), sum)));
        }
        return Optional.of(sheets);
    }

    private static BigInteger total(Map<String, BigInteger> states) {
        return states.values().stream().reduce(BigInteger.ZERO, BigInteger::add);
    }

    /** In how many ways each state is come to, by the number of pairs named. */
    private final class Ways {
        private final List<Map<String, BigInteger>> after = new ArrayList<>();

        Ways() {
            for (int named = 0; named <= pairs; named++) {
                after.add(new HashMap<>());
            }
            after.get(0).put(nobodyNamed, BigInteger.ONE);
        }

        /**
         * Names none, one or more pairs of this sum as well: behind all others, or anywhere between them.
         *
         * @return false if there are too many states
         */
        boolean add(int sum, boolean anywhere) {
            List<Map<String, BigInteger>> layer = new ArrayList<>(after);
            layer.replaceAll(HashMap::new);
            for (int more = 1; more <= pairs; more++) {
                List<Map<String, BigInteger>> next = new ArrayList<>(List.of(Map.of()));
                for (int named = 0; named < pairs; named++) {
                    Map<String, BigInteger> states = oneMore(layer.get(named), sum);
                    next.add(states);
                    BigInteger places = anywhere ? choose(named + 1, more) : BigInteger.ONE;
                    Map<String, BigInteger> all = after.get(named + 1);
                    states.forEach((state, ways) -> all.merge(state, ways.multiply(places), BigInteger::add));
                }
                if (after.stream().mapToInt(Map::size).sum() > mostStates) {
                    return false;
                }
                layer = next;
            }
            return true;
        }
    }

    private Map<String, BigInteger> oneMore(Map<String, BigInteger> from, int sum) {
        Map<String, BigInteger> to = new HashMap<>();
        for (Kinds kinds : bySum.getOrDefault(sum, List.of())) {
            from.forEach((state, ways) -> name(kinds, state, ways, to));
        }
        return to;
    }

    /** Every pair of two such players, whoever was named how often before. */
    private void name(Kinds kinds, String state, BigInteger ways, Map<String, BigInteger> to) {
        for (int first = 0; first < most; first++) {
            for (int second = kinds.one == kinds.other ? first : 0; second < most; second++) {
                int one = kinds.one * (most + 1) + first;
                int other = kinds.other * (most + 1) + second;
                long choices = one == other
                        ? state.charAt(one) * (state.charAt(one) - 1L) / 2
                        : (long) state.charAt(one) * state.charAt(other);
                if (choices > 0) {
                    char[] then = state.toCharArray();
                    then[one]--;
                    then[one + 1]++;
                    then[other]--;
                    then[other + 1]++;
                    to.merge(new String(then), ways.multiply(BigInteger.valueOf(choices)), BigInteger::add);
                }
            }
        }
    }

    private static BigInteger choose(int of, int some) {
        BigInteger ways = BigInteger.ONE;
        for (int i = 1; i <= some; i++) {
            ways = ways.multiply(BigInteger.valueOf(of - some + i)).divide(BigInteger.valueOf(i));
        }
        return of < some ? BigInteger.ZERO : ways;
    }
}
