package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;

/**
 * Are all allowed draws equally likely, and are towns apart whenever they can be? Judge: a listing of every way to fill
 * the pools, written without the room's counting. Bounds: chi-square at 99.9 %, by the Wilson-Hilferty approximation
 * (Proc. Nat. Acad. Sci. 17, 1931). Seeds are fixed, so the outcome is too.
 */
class PoolDrawUniformTest {
    private static final int DRAWS = 10_000;

    @Test
    void with_towns_and_seeds() {
        uniform(
                2,
                PoolDrawTest.club("a", "X", 1),
                PoolDrawTest.club("b", "X", 0),
                PoolDrawTest.club("c", "Y", 0),
                PoolDrawTest.club("d", "Y", 0),
                PoolDrawTest.club("e", "", 2),
                PoolDrawTest.club("f", "", 0),
                PoolDrawTest.club("g", "", 0),
                PoolDrawTest.club("h", "", 0));
    }

    @Test
    void with_uneven_pools_where_a_greedy_draw_is_biased() {
        uniform(
                3,
                PoolDrawTest.club("a", "X", 0),
                PoolDrawTest.club("b", "X", 0),
                PoolDrawTest.club("c", "X", 0),
                PoolDrawTest.club("d", "Y", 0),
                PoolDrawTest.club("e", "Y", 0),
                PoolDrawTest.club("f", "", 0),
                PoolDrawTest.club("g", "", 1));
    }

    @Test
    void where_separation_is_impossible() {
        uniform(
                2,
                PoolDrawTest.club("a", "X", 0),
                PoolDrawTest.club("b", "X", 0),
                PoolDrawTest.club("c", "X", 0),
                PoolDrawTest.club("d", "Y", 0),
                PoolDrawTest.club("e", "Y", 0),
                PoolDrawTest.club("f", "", 0),
                PoolDrawTest.club("g", "", 0));
    }

    @Test
    void numbers_inside_a_pool_are_uniform_too() {
        List<Entrant> clubs = PoolDrawTest.plain(4);
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < DRAWS; i++) {
            seen.merge(PoolDrawTest.drawn(clubs, 1, "n" + i).pools().toString(), 1, Integer::sum);
        }
        assertThat(seen).hasSize(24);
        withinChance(seen, 24);
    }

    /** Two of a town in a pool of 4 meet in round 1 as 1-4 or 2-3 (FIDE C.05 Annex 1): 2 x 2 x 2 numberings. */
    @Test
    void numbers_that_let_a_town_meet_first_are_uniform() {
        List<Entrant> clubs = List.of(
                PoolDrawTest.club("a", "X", 0),
                PoolDrawTest.club("b", "X", 0),
                PoolDrawTest.club("c", "", 0),
                PoolDrawTest.club("d", "", 0));
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < DRAWS; i++) {
            PoolDrawResult.Drawn drawn = PoolDrawTest.drawn(clubs, 1, "n" + i);
            assertThat(drawn.sharedTowns().get(0).rounds()).containsExactly(1);
            seen.merge(drawn.pools().toString(), 1, Integer::sum);
        }
        assertThat(seen).hasSize(8);
        withinChance(seen, 8);
    }

    @Test
    void towns_meet_as_seldom_as_the_exhaustive_search_allows() {
        long seed = Long.getLong("seed", 20_250_601L);
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            int n = 4 + random.nextInt(5);
            int pools = 2 + random.nextInt(n / 2 - 1);
            List<Entrant> clubs = new ArrayList<>();
            int seeds = random.nextInt(n + 1);
            for (int c = 0; c < n; c++) {
                String town = random.nextInt(3) == 0 ? "" : "T" + random.nextInt(3);
                clubs.add(PoolDrawTest.club("c" + c, town, c < seeds ? c + 1 : 0));
            }
            PoolDrawResult.Drawn drawn = PoolDrawTest.drawn(clubs, pools, "s" + i);
            Listing listing = new Listing(clubs, pools, drawn);
            assertThat(listing.allowed)
                    .as("-Dseed=%s case %s: %s", seed, i, clubs)
                    .contains(Listing.line(drawn.pools()));
            assertThat(drawn.sharedTowns().isEmpty())
                    .as("-Dseed=%s case %s", seed, i)
                    .isEqualTo(listing.fewest == 0);
        }
    }

    private static void uniform(int pools, Entrant... entrants) {
        List<Entrant> clubs = List.of(entrants);
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < DRAWS; i++) {
            seen.merge(
                    Listing.line(PoolDrawTest.drawn(clubs, pools, "seed " + i).pools()), 1, Integer::sum);
        }
        Listing listing = new Listing(clubs, pools, PoolDrawTest.drawn(clubs, pools, "seed 0"));
        assertThat(seen.keySet()).containsExactlyInAnyOrderElementsOf(listing.allowed);
        withinChance(seen, listing.allowed.size());
    }

    static void withinChance(Map<String, Integer> seen, int outcomes) {
        double total = seen.values().stream().mapToInt(i -> i).sum();
        double expected = total / outcomes;
        double chiSquare = (outcomes - seen.size()) * expected
                + seen.values().stream()
                        .mapToDouble(n -> (n - expected) * (n - expected) / expected)
                        .sum();
        double df = outcomes - 1;
        double bound = df * Math.pow(1 - 2 / (9 * df) + 3.0902 * Math.sqrt(2 / (9 * df)), 3);
        assertThat(outcomes).isGreaterThan(1);
        assertThat(chiSquare).isLessThan(bound);
    }

    /** Every way to fill the pools with the seeds where they are, kept if no other way has fewer town meetings. */
    private static final class Listing {
        final List<String> allowed = new ArrayList<>();
        int fewest = Integer.MAX_VALUE;
        private final List<Entrant> clubs;
        private final int[] sizes;
        private final Map<ClubId, Integer> fixed = new TreeMap<>();
        private final int[] at;

        Listing(List<Entrant> clubs, int pools, PoolDrawResult.Drawn drawn) {
            this.clubs = clubs;
            this.sizes = PoolDraw.sizes(clubs.size(), pools);
            this.at = new int[clubs.size()];
            drawn.intoPools().stream()
                    .filter(s -> s.how() == DrawStep.How.SEEDED)
                    .forEach(s -> fixed.put(ClubId.of(s.subject()), s.chosen().charAt(0) - 'A'));
            fill(0, new int[pools]);
        }

        private void fill(int club, int[] used) {
            if (club == clubs.size()) {
                keep();
                return;
            }
            for (int pool = 0; pool < sizes.length; pool++) {
                if (used[pool] < sizes[pool]
                        && fixed.getOrDefault(clubs.get(club).club(), pool) == pool) {
                    at[club] = pool;
                    used[pool]++;
                    fill(club + 1, used);
                    used[pool]--;
                }
            }
        }

        private void keep() {
            int meetings = 0;
            for (int i = 0; i < at.length; i++) {
                for (int j = 0; j < i; j++) {
                    boolean sameTown = clubs.get(i).town().isPresent()
                            && clubs.get(i).town().equals(clubs.get(j).town());
                    meetings += sameTown && at[i] == at[j] ? 1 : 0;
                }
            }
            if (meetings < fewest) {
                fewest = meetings;
                allowed.clear();
            }
            if (meetings == fewest) {
                StringBuilder line = new StringBuilder();
                for (int i = 0; i < at.length; i++) {
                    line.append(clubs.get(i).club())
                            .append(PoolDraw.poolName(at[i]))
                            .append(' ');
                }
                allowed.add(line.toString());
            }
        }

        static String line(List<Pool> pools) {
            Map<ClubId, String> byClub = new TreeMap<>();
            pools.forEach(p -> p.clubs().forEach(c -> byClub.put(c, p.name())));
            return byClub.entrySet().stream()
                    .map(e -> e.getKey() + e.getValue() + " ")
                    .collect(Collectors.joining());
        }
    }
}
