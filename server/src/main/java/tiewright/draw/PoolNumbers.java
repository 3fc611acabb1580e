package tiewright.draw;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import tiewright.event.ClubId;

/**
 * Draws the numbers of one pool: every numbering equally likely or, where clubs of one town share the pool, every one of
 * those that let them meet earliest (smallest sum of the rounds in which they meet).
 */
final class PoolNumbers {
    private record Cheapest(int cost, long ways) {
        static final Cheapest NONE = new Cheapest(Integer.MAX_VALUE, 0);

        Cheapest or(Cheapest other) {
            return cost == other.cost ? new Cheapest(cost, ways + other.ways) : cost < other.cost ? this : other;
        }
    }

    private final String pool;
    private final int size;
    private final int[][] meet;
    private final List<ClubId> clubs;
    private final int[] townOf;
    private final int[] townSizes;

    /** Towns: for each club that has to meet others early, a name shared by them. */
    PoolNumbers(String pool, List<ClubId> members, Map<ClubId, String> towns) {
        this.pool = pool;
        this.size = members.size();
        this.clubs = members.stream().sorted().toList();
        this.meet = new int[size][size];
        List<List<Berger.Pairing>> rounds = Berger.rounds(size);
        for (int r = 0; r < rounds.size(); r++) {
            for (Berger.Pairing p : rounds.get(r)) {
                meet[p.home() - 1][p.away() - 1] = r + 1;
                meet[p.away() - 1][p.home() - 1] = r + 1;
            }
        }
        List<List<ClubId>> shared = shared(clubs, towns);
        this.townSizes = shared.stream().mapToInt(List::size).toArray();
        this.townOf = clubs.stream()
                .mapToInt(c -> IntStream.range(0, shared.size())
                        .filter(t -> shared.get(t).contains(c))
                        .findFirst()
                        .orElse(-1))
                .toArray();
    }

    /** Clubs of one town, where a town has more than one. */
    private static List<List<ClubId>> shared(List<ClubId> clubs, Map<ClubId, String> towns) {
        Map<String, List<ClubId>> byTown = new TreeMap<>();
        clubs.stream()
                .filter(towns::containsKey)
                .forEach(c -> byTown.computeIfAbsent(towns.get(c), t -> new ArrayList<>())
                        .add(c));
        byTown.values().removeIf(shared -> shared.size() < 2);
        return List.copyOf(byTown.values());
    }

    /** The clubs by number; each step is added to {@code steps}. */
    List<ClubId> draw(PublicLot lot, List<DrawStep> steps) {
        int[] numberOf = new int[size];
        Arrays.fill(numberOf, -1);
        int best = ways(numberOf).cost();
        for (int club = 0; club < size; club++) {
            List<DrawStep.Choice> choices = new ArrayList<>();
            for (int number = 0; number < size; number++) {
                choices.add(new DrawStep.Choice(
                        "" + (number + 1), BigInteger.valueOf(waysWith(numberOf, club, number, best))));
            }
            DrawStep step = DrawStep.draw(clubs.get(club).code(), PoolDraw.NUMBERS + pool, choices, lot);
            numberOf[club] = Integer.parseInt(step.chosen()) - 1;
            steps.add(step);
        }
        return IntStream.range(0, size)
                .boxed()
                .sorted(Comparator.comparing(c -> numberOf[c]))
                .map(clubs::get)
                .toList();
    }

    private long waysWith(int[] numberOf, int club, int number, int best) {
        if (Arrays.stream(numberOf).anyMatch(n -> n == number)) {
            return 0;
        }
        int[] with = numberOf.clone();
        with[club] = number;
        Cheapest ways = ways(with);
        return ways.cost() == best ? ways.ways() : 0;
    }

    /** The smallest cost with these numbers given (-1 = not yet), and in how many ways the towns can be set for it. */
    private Cheapest ways(int[] numberOf) {
        int[] fixed = new int[townSizes.length];
        int used = 0;
        for (int club = 0; club < size; club++) {
            if (numberOf[club] >= 0) {
                used |= 1 << numberOf[club];
                if (townOf[club] >= 0) {
                    fixed[townOf[club]] |= 1 << numberOf[club];
                }
            }
        }
        return ways(0, used, fixed, new HashMap<>());
    }

    private Cheapest ways(int town, int used, int[] fixed, Map<Integer, Cheapest> known) {
        if (town == townSizes.length) {
            return new Cheapest(0, 1);
        }
        int key = town << size | used;
        Cheapest before = known.get(key);
        if (before == null) {
            int more = townSizes[town] - Integer.bitCount(fixed[town]);
            before = choose(town, 0, more, fixed[town], used, fixed, known);
            known.put(key, before);
        }
        return before;
    }

    /** Gives {@code more} of the numbers from {@code from} on to a town that already has {@code mine}. */
    private Cheapest choose(
            int town, int from, int more, int mine, int used, int[] fixed, Map<Integer, Cheapest> known) {
        if (more == 0) {
            Cheapest rest = ways(town + 1, used, fixed, known);
            return rest.ways() == 0 ? rest : new Cheapest(rest.cost() + cost(mine), rest.ways());
        }
        Cheapest all = Cheapest.NONE;
        for (int number = from; number < size; number++) {
            int bit = 1 << number;
            if ((used & bit) == 0) {
                all = all.or(choose(town, number + 1, more - 1, mine | bit, used | bit, fixed, known));
            }
        }
        return all;
    }

    private int cost(int numbers) {
        int sum = 0;
        for (int one = 0; one < size; one++) {
            for (int other = one + 1; other < size; other++) {
                sum += (numbers >> one & numbers >> other & 1) * meet[one][other];
            }
        }
        return sum;
    }
}
