package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Seeding;
import tiewright.event.SlotSource;

/**
 * The draw of the knockout against the published lines for seeds and against a listing of every bracket, written without
 * the room's counting.
 */
class KnockoutDrawTest {
    private static final int DRAWS = 10_000;

    static KnockoutPlan planned(int pools, int fromEach, Seeding seeding, String spokenSeed) {
        return ((KnockoutResult.Planned) KnockoutDraw.draw(shape(pools, fromEach, seeding), spokenSeed)).plan();
    }

    private static KnockoutDraw.Shape shape(int pools, int fromEach, Seeding seeding) {
        return new KnockoutDraw.Shape(
                IntStream.range(0, pools).mapToObj(PoolDraw::poolName).toList(), fromEach, seeding, true);
    }

    private static int line(KnockoutPlan plan, String source) {
        return plan.lines().indexOf(SlotSource.parse(source)) + 1;
    }

    private static String text(KnockoutPlan plan) {
        return plan.lines().stream()
                .map(l -> l.map(SlotSource::code).orElse("bye"))
                .collect(Collectors.joining(" "));
    }

    /** ITF 2015 Pro Circuit Rulebook, Women's Circuit p. 63: of 16 lines, 1 on 1, 2 on 16, 3 and 4 drawn for 5 and 12. */
    @Test
    void tennis_seeds_of_sixteen_stand_on_the_published_lines() {
        Set<Integer> third = new java.util.TreeSet<>();
        BracketDraw counted = new BracketDraw(shape(4, 4, Seeding.TENNIS));
        for (int i = 0; i < 60; i++) {
            KnockoutPlan plan = counted.drawn("s" + i);
            assertThat(line(plan, "A-1")).isEqualTo(1);
            assertThat(line(plan, "B-1")).isEqualTo(16);
            assertThat(Set.of(line(plan, "C-1"), line(plan, "D-1"))).isEqualTo(Set.of(5, 12));
            third.add(line(plan, "C-1"));
        }
        assertThat(third).containsExactly(5, 12);
    }

    /** ITTF 3.6.2: 3-4 at the bottom of the first half and the top of the second; 5-8 at the bottoms of odd quarters and the tops of even ones. */
    @ParameterizedTest
    @CsvSource({"4,2,8,'4,5',''", "4,4,16,'8,9','4,5,12,13'"})
    void halves_put_the_seeds_on_the_published_lines(int pools, int from, int last, String third, String fifth) {
        BracketDraw counted = new BracketDraw(shape(pools, from, Seeding.HALVES));
        for (int i = 0; i < 40; i++) {
            KnockoutPlan plan = counted.drawn("s" + i);
            assertThat(line(plan, "A-1")).isEqualTo(1);
            assertThat(line(plan, "B-1")).isEqualTo(last);
            assertThat(Set.of("" + line(plan, "C-1"), "" + line(plan, "D-1"))).isEqualTo(Set.of(third.split(",")));
            if (!fifth.isEmpty()) {
                assertThat(Set.of("A-2", "B-2", "C-2", "D-2").stream()
                                .map(s -> "" + line(plan, s))
                                .collect(Collectors.toSet()))
                        .isEqualTo(Set.of(fifth.split(",")));
            }
        }
    }

    @Test
    void eleven_clubs_in_three_pools_make_a_bracket_of_eight_without_a_meeting_inside_a_pool_first() {
        assertThat(PoolDraw.sizes(11, 3)).containsExactly(4, 4, 3);
        BracketDraw counted = new BracketDraw(shape(3, 2, Seeding.TENNIS));
        for (int i = 0; i < 500; i++) {
            KnockoutPlan plan = counted.drawn("s" + i);
            assertThat(plan.lines()).hasSize(8);
            assertThat(plan.samePoolFirst()).isEmpty();
            for (PlannedTie tie : plan.ties()) {
                if (tie.tie().code().startsWith("QF")) {
                    assertThat(tie.homeFrom().of())
                            .as("%s of s%s", tie, i)
                            .isNotEqualTo(tie.awayFrom().of());
                }
            }
            assertThat(plan.lines().get(1)).as("the first seed has a bye").isEmpty();
            assertThat(plan.lines().get(6)).as("the second seed has a bye").isEmpty();
        }
    }

    @Test
    void the_ties_of_a_bracket_with_byes_know_their_sources() {
        KnockoutPlan plan = planned(3, 2, Seeding.TENNIS, "owls");
        assertThat(plan.ties())
                .extracting(t -> t.tie() + "/" + t.round())
                .containsExactly("QF2/1", "QF3/1", "SF1/2", "SF2/2", "P3/3", "F/3");
        Map<String, PlannedTie> ties =
                plan.ties().stream().collect(Collectors.toMap(t -> t.tie().code(), t -> t));
        assertThat(ties.get("SF1").homeFrom()).hasToString("A-1");
        assertThat(ties.get("SF1").awayFrom()).hasToString("winner-QF2");
        assertThat(ties.get("SF2").homeFrom()).hasToString("winner-QF3");
        assertThat(ties.get("SF2").awayFrom()).hasToString("B-1");
        assertThat(ties.get("P3").homeFrom()).hasToString("loser-SF1");
        assertThat(ties.get("F").awayFrom()).hasToString("winner-SF2");
    }

    @Test
    void the_same_seed_gives_the_same_draw_and_another_seed_another() {
        assertThat(planned(4, 2, Seeding.TENNIS, "seven owls"))
                .isEqualTo(planned(4, 2, Seeding.TENNIS, " seven owls\n"));
        assertThat(IntStream.range(0, 20)
                        .mapToObj(i -> text(planned(4, 2, Seeding.TENNIS, "s" + i)))
                        .distinct()
                        .count())
                .isGreaterThan(1);
    }

    /** Judge: the steps done again with nothing but hashes and remainders. */
    @Test
    void every_step_can_be_done_again_from_the_record() {
        KnockoutPlan plan = planned(6, 2, Seeding.TENNIS, "seven owls");
        int replayed = 0;
        for (DrawStep step : plan.steps()) {
            if (step.how() == DrawStep.How.DRAWN) {
                BigInteger sum =
                        step.choices().stream().map(DrawStep.Choice::weight).reduce(BigInteger.ZERO, BigInteger::add);
                byte[] hash = PublicLot.sha256("seven owls\nknockout\n" + step.hash());
                BigInteger left = new BigInteger(1, hash).mod(sum);
                assertThat(left).isEqualTo(step.drawn());
                String fell = "";
                for (DrawStep.Choice choice : step.choices()) {
                    fell = fell.isEmpty() && left.compareTo(choice.weight()) < 0 ? choice.name() : fell;
                    left = left.subtract(choice.weight());
                }
                assertThat(fell).isEqualTo(step.chosen());
                replayed++;
            }
        }
        assertThat(replayed).isGreaterThan(4);
        assertThat(plan.steps())
                .filteredOn(s -> !s.subject().equals("bye"))
                .hasSize(12)
                .allSatisfy(s -> assertThat(line(plan, s.subject())).isEqualTo(Integer.parseInt(s.chosen())));
    }

    /** Every allowed bracket, no other one, each as often as the other within chance (chi-square at 99.9 %). */
    @ParameterizedTest
    @CsvSource({
        "2,2,TENNIS",
        "3,2,TENNIS",
        "3,2,HALVES",
        "4,2,TENNIS",
        "4,2,HALVES",
        "5,1,TENNIS",
        "7,1,TENNIS",
        "1,4,TENNIS",
        "1,3,TENNIS",
        "2,4,TENNIS",
        "2,3,TENNIS",
        "3,3,TENNIS",
        "3,3,HALVES"
    })
    void every_allowed_bracket_is_equally_likely(int pools, int fromEach, Seeding seeding) {
        Listing listing = new Listing(pools, fromEach, seeding);
        BracketDraw counted = new BracketDraw(shape(pools, fromEach, seeding));
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < DRAWS; i++) {
            seen.merge(text(counted.drawn("seed " + i)), 1, Integer::sum);
        }
        assertThat(seen.keySet()).isSubsetOf(listing.allowed);
        if (listing.allowed.size() <= DRAWS / 10) {
            assertThat(seen.keySet()).containsExactlyInAnyOrderElementsOf(listing.allowed);
        }
        if (listing.allowed.size() > 1) {
            PoolDrawUniformTest.withinChance(seen, listing.allowed.size());
        }
    }

    /** Large brackets are drawn within the limit of the count, and nobody meets a club of the own pool first. */
    @ParameterizedTest
    @CsvSource({"16,2", "6,2", "10,2", "8,3", "5,4", "26,1"})
    void large_brackets_keep_pools_apart(int pools, int fromEach) {
        KnockoutPlan plan = planned(pools, fromEach, Seeding.TENNIS, "s");
        assertThat(plan.samePoolFirst()).isEmpty();
        assertThat(plan.sameHalf()).isEmpty();
    }

    @Test
    void a_bracket_with_too_many_cases_is_refused_and_not_guessed() {
        assertThat(KnockoutDraw.draw(shape(8, 4, Seeding.TENNIS), "s"))
                .isEqualTo(new KnockoutResult.Refused(
                        List.of(DrawFault.of(DrawFault.Code.TOO_MANY_CASES, 32, KnockoutDraw.MOST_STATES))));
    }

    @Test
    void one_pool_must_meet_itself_and_the_plan_says_so() {
        assertThat(planned(1, 4, Seeding.TENNIS, "s").samePoolFirst()).containsExactly("A", "A");
    }

    @Test
    void refuses_with_every_reason_at_once() {
        assertThat(KnockoutDraw.draw(
                        new KnockoutDraw.Shape(List.of("A", "A", "winner"), 11, Seeding.TENNIS, false), " "))
                .isEqualTo(new KnockoutResult.Refused(List.of(
                        DrawFault.of(DrawFault.Code.NO_SPOKEN_SEED, ""),
                        DrawFault.of(DrawFault.Code.POOL_TWICE, "A"),
                        DrawFault.of(DrawFault.Code.NOT_A_POOL_NAME, "winner"),
                        DrawFault.of(DrawFault.Code.TOO_MANY_FROM_A_POOL, 11, 4))));
        assertThat(code(0, 2)).isEqualTo(DrawFault.Code.NO_POOL);
        assertThat(code(2, 0)).isEqualTo(DrawFault.Code.NO_QUALIFIER);
        assertThat(code(1, 1)).isEqualTo(DrawFault.Code.TOO_FEW_QUALIFIERS);
        assertThat(code(9, 4)).isEqualTo(DrawFault.Code.TOO_MANY_QUALIFIERS);
    }

    private static DrawFault.Code code(int pools, int fromEach) {
        return ((KnockoutResult.Refused) KnockoutDraw.draw(shape(pools, fromEach, Seeding.TENNIS), "s"))
                .faults()
                .get(0)
                .code();
    }

    /**
     * Every bracket that keeps the lines of the seeds and the byes, then those with the fewest first ties inside a pool,
     * then of these the ones with the fewest pools whose first and second share a half.
     */
    private static final class Listing {
        /** Lines for seeds 1, 2, 3-4, 5-8; of 16 lines tennis publishes 1-4 only, 5-8 is our own reading (docs/draw.md). */
        private static final Map<String, List<List<Integer>>> LINES = Map.of(
                "2 TENNIS", List.of(List.of(1)),
                "4 TENNIS", List.of(List.of(1), List.of(4)),
                "8 TENNIS", List.of(List.of(1), List.of(8), List.of(3, 6)),
                "8 HALVES", List.of(List.of(1), List.of(8), List.of(4, 5)),
                "16 TENNIS", List.of(List.of(1), List.of(16), List.of(5, 12), List.of(4, 8, 9, 13)),
                "16 HALVES", List.of(List.of(1), List.of(16), List.of(8, 9), List.of(4, 5, 12, 13)));

        final List<String> allowed = new ArrayList<>();
        private final int size;
        private final int seeds;
        private final int byes;
        private final int pools;
        private final List<List<Integer>> lines;
        private final List<String> clubs = new ArrayList<>();
        private final Map<Integer, String> at = new TreeMap<>();
        private int fewest = Integer.MAX_VALUE;

        Listing(int pools, int fromEach, Seeding seeding) {
            this.pools = pools;
            int n = pools * fromEach;
            this.size = n <= 2 ? 2 : n <= 4 ? 4 : n <= 8 ? 8 : 16;
            this.lines = LINES.get(size + " " + seeding);
            this.byes = size - n;
            for (int place = 1; place <= fromEach; place++) {
                for (int pool = 0; pool < pools; pool++) {
                    clubs.add((char) ('A' + pool) + "-" + place);
                }
            }
            int whole = 0;
            while (whole + pools <= size / 2 && whole < n) {
                whole += pools;
            }
            this.seeds = pools > size / 2 ? size / 2 : whole;
            placeSeed(1);
        }

        private List<Integer> linesOf(int seed) {
            return lines.get(seed == 1 ? 0 : seed == 2 ? 1 : seed <= 4 ? 2 : 3);
        }

        private static int other(int line) {
            return line % 2 == 1 ? line + 1 : line - 1;
        }

        private void placeSeed(int seed) {
            if (seed > seeds) {
                placeBye(seeds + 1);
                return;
            }
            for (int line : linesOf(seed)) {
                if (!at.containsKey(line)) {
                    at.put(line, clubs.get(seed - 1));
                    if (seed <= byes) {
                        at.put(other(line), "bye");
                    }
                    placeSeed(seed + 1);
                    at.remove(line);
                    at.remove(other(line));
                }
            }
        }

        /** A bye beyond the seeds: the seed's line stays for a club of the next place, the other line is the bye. */
        private void placeBye(int number) {
            if (number > byes) {
                placeRest(seeds);
                return;
            }
            for (int line : linesOf(number)) {
                if (!at.containsKey(line) && !at.containsKey(other(line))) {
                    at.put(other(line), "bye");
                    placeBye(number + 1);
                    at.remove(other(line));
                }
            }
        }

        private void placeRest(int club) {
            if (club == clubs.size()) {
                keep();
                return;
            }
            boolean next = club < seeds + pools;
            for (int line = 1; line <= size; line++) {
                boolean byeBeside = "bye".equals(at.get(other(line)));
                if (!at.containsKey(line) && (next || !byeBeside)) {
                    at.put(line, clubs.get(club));
                    placeRest(club + 1);
                    at.remove(line);
                }
            }
        }

        private void keep() {
            int cost = 0;
            for (int line = 1; line < size; line += 2) {
                cost += at.get(line).charAt(0) == at.get(line + 1).charAt(0) ? 1000 : 0;
            }
            for (int pool = 0; pool < pools && size > 2; pool++) {
                char name = (char) ('A' + pool);
                Optional<Integer> first = lineOf(name + "-1");
                Optional<Integer> second = lineOf(name + "-2");
                cost += second.isPresent() && (first.orElseThrow() <= size / 2) == (second.get() <= size / 2) ? 1 : 0;
            }
            if (cost < fewest) {
                fewest = cost;
                allowed.clear();
            }
            if (cost == fewest) {
                allowed.add(String.join(" ", at.values()));
            }
        }

        private Optional<Integer> lineOf(String club) {
            return at.entrySet().stream()
                    .filter(e -> e.getValue().equals(club))
                    .map(Map.Entry::getKey)
                    .findFirst();
        }
    }
}
