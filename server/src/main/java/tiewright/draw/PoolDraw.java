package tiewright.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.event.ClubId;

/**
 * Draws clubs into pools from a seed spoken in public.
 *
 * <p>Pools are as even in size as possible, the bigger ones first. Seeds 1 to P go to pools 1 to P, the next P in
 * reverse, and so on, passing over full pools (common practice, no source). The other clubs are drawn: each draw with
 * the fewest possible meetings of clubs of one town inside a pool is equally likely. Then the numbers inside each pool
 * are drawn; clubs of one town that had to share it meet as early as the round order lets them. The order of the
 * entries does not matter.
 */
public final class PoolDraw {
    public static final int MOST_POOLS = 26;
    static final String POOLS = "pools";
    static final String NUMBERS = "numbers ";

    private final List<Entrant> entrants;
    private final boolean townsApart;
    private final int[] sizes;
    private final Map<ClubId, Integer> poolOf = new HashMap<>();
    private final List<DrawStep> intoPools = new ArrayList<>();

    private PoolDraw(List<Entrant> entrants, int pools, boolean townsApart) {
        this.entrants =
                entrants.stream().sorted(Comparator.comparing(Entrant::club)).toList();
        this.townsApart = townsApart;
        this.sizes = sizes(entrants.size(), pools);
    }

    /** The pools, or every reason why they cannot be drawn so. */
    public static PoolDrawResult draw(List<Entrant> entrants, int pools, boolean keepTownsApart, String spokenSeed) {
        List<DrawFault> faults = PoolDrawFaults.of(entrants, pools, spokenSeed);
        if (!faults.isEmpty()) {
            return new PoolDrawResult.Refused(faults);
        }
        try {
            return new PoolDraw(entrants, pools, keepTownsApart).drawn(spokenSeed);
        } catch (Spread.TooManyCases tooMany) {
            return new PoolDrawResult.Refused(
                    List.of(DrawFault.of(DrawFault.Code.TOO_MANY_CASES, entrants.size(), Spread.MOST_STATES)));
        }
    }

    /** As even as possible, the bigger pools first: 11 clubs in 3 pools give 4, 4, 3. */
    public static int[] sizes(int clubs, int pools) {
        return IntStream.range(0, pools)
                .map(p -> clubs / pools + (p < clubs % pools ? 1 : 0))
                .toArray();
    }

    /** A, B, C, … for pools 0, 1, 2, … */
    public static String poolName(int pool) {
        return String.valueOf((char) ('A' + pool));
    }

    private PoolDrawResult drawn(String spokenSeed) {
        placeSeeds();
        List<ClubId> seeded = List.copyOf(poolOf.keySet());
        drawTheRest(new PublicLot(spokenSeed, POOLS));
        List<DrawStep> numbers = new ArrayList<>();
        List<Pool> pools = IntStream.range(0, sizes.length)
                .mapToObj(p -> numbered(p, spokenSeed, numbers))
                .toList();
        Map<ClubId, String> towns = townsThatMatter();
        List<SharedTown> shared = new SharedTowns(sizes.length, towns, seeded).in(pools);
        return new PoolDrawResult.Drawn(PublicLot.spoken(spokenSeed), pools, intoPools, numbers, shared);
    }

    private void placeSeeds() {
        int[] room = sizes.clone();
        List<Integer> snake = new ArrayList<>();
        for (int row = 0; snake.size() < entrants.size(); row++) {
            for (int i = 0; i < sizes.length; i++) {
                int pool = row % 2 == 0 ? i : sizes.length - 1 - i;
                if (room[pool] > 0) {
                    room[pool]--;
                    snake.add(pool);
                }
            }
        }
        List<Entrant> seeds = entrants.stream()
                .filter(e -> e.seed().isPresent())
                .sorted(Comparator.comparingInt(e -> e.seed().getAsInt()))
                .toList();
        for (int i = 0; i < seeds.size(); i++) {
            ClubId club = seeds.get(i).club();
            poolOf.put(club, snake.get(i));
            intoPools.add(DrawStep.seeded(club.code(), poolName(snake.get(i))));
        }
    }

    /** Towns with clubs to draw first, the biggest first; then the clubs that are alone in their town; each by code. */
    private void drawTheRest(PublicLot lot) {
        List<List<ClubId>> groups = groups();
        Map<ClubId, SpreadState.Member> members = new LinkedHashMap<>();
        for (int g = 0; g < groups.size(); g++) {
            SpreadState.Member member = new SpreadState.Member(g, 0);
            groups.get(g).forEach(club -> members.put(club, member));
        }
        SpreadState.Member alone = new SpreadState.Member(groups.size(), 1);
        entrants.forEach(e -> members.putIfAbsent(e.club(), alone));

        Spread spread = new Spread(Spread.MOST_STATES);
        SpreadState state = spread.cheapest(withSeedsPlaced(members, groups.size() + 1));
        for (Map.Entry<ClubId, SpreadState.Member> next : members.entrySet()) {
            if (!poolOf.containsKey(next.getKey())) {
                int pool = drawOne(next.getKey(), next.getValue(), spread, state, lot);
                state = state.put(next.getValue(), pool);
            }
        }
    }

    /** Clubs of one town that should not meet early, the largest group first. */
    private List<List<ClubId>> groups() {
        Map<String, List<ClubId>> towns = new TreeMap<>();
        townsThatMatter()
                .forEach((club, town) ->
                        towns.computeIfAbsent(town, t -> new ArrayList<>()).add(club));
        return towns.values().stream()
                .map(t -> t.stream().sorted().toList())
                .sorted(Comparator.<List<ClubId>>comparingInt(t -> -t.size()).thenComparing(t -> t.get(0)))
                .toList();
    }

    private SpreadState withSeedsPlaced(Map<ClubId, SpreadState.Member> members, int groups) {
        List<SpreadState.Bin> bins = IntStream.of(sizes)
                .mapToObj(size -> new SpreadState.Bin(size, 0, -1, false))
                .toList();
        SpreadState state = SpreadState.start(
                List.of(SpreadState.Kind.GROUPED, SpreadState.Kind.FREE), bins, groups, List.copyOf(members.values()));
        for (Map.Entry<ClubId, SpreadState.Member> member : members.entrySet()) {
            if (poolOf.containsKey(member.getKey())) {
                state = state.put(member.getValue(), poolOf.get(member.getKey()));
            }
        }
        return state;
    }

    private int drawOne(ClubId club, SpreadState.Member member, Spread spread, SpreadState state, PublicLot lot) {
        List<DrawStep.Choice> choices = IntStream.range(0, sizes.length)
                .filter(p -> state.allows(member, p))
                .mapToObj(p -> new DrawStep.Choice(poolName(p), spread.count(state.put(member, p))))
                .toList();
        DrawStep step = DrawStep.draw(club.code(), POOLS, choices, lot);
        intoPools.add(step);
        int pool = step.chosen().charAt(0) - 'A';
        poolOf.put(club, pool);
        return pool;
    }

    private Pool numbered(int pool, String spokenSeed, List<DrawStep> numbers) {
        List<ClubId> members = entrants.stream()
                .map(Entrant::club)
                .filter(c -> Objects.equals(poolOf.get(c), pool))
                .toList();
        String name = poolName(pool);
        PublicLot lot = new PublicLot(spokenSeed, NUMBERS + name);
        return new Pool(name, new PoolNumbers(name, members, townsThatMatter()).draw(lot, numbers));
    }

    /** The towns of clubs that are to be kept apart from another; as written by the club with the first code. */
    private Map<ClubId, String> townsThatMatter() {
        if (!townsApart) {
            return Map.of();
        }
        Map<String, List<Entrant>> towns = entrants.stream()
                .filter(e -> e.townAsCompared().isPresent())
                .collect(Collectors.groupingBy(e -> e.townAsCompared().orElseThrow()));
        Map<ClubId, String> shared = new HashMap<>();
        towns.values().stream()
                .filter(t -> t.size() > 1)
                .forEach(t -> t.forEach(
                        e -> shared.put(e.club(), t.get(0).town().orElseThrow().strip())));
        return shared;
    }
}
