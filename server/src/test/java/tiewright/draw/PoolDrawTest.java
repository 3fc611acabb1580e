package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;

/** The rules of the draw of pools. Snake seeding and even sizes are common practice, no source. */
class PoolDrawTest {
    static Entrant club(String code, String town, int seed) {
        return new Entrant(
                ClubId.of(code),
                "Club " + code,
                town.isEmpty() ? Optional.empty() : Optional.of(town),
                seed == 0 ? OptionalInt.empty() : OptionalInt.of(seed));
    }

    static PoolDrawResult.Drawn drawn(List<Entrant> clubs, int pools, String seed) {
        return (PoolDrawResult.Drawn) PoolDraw.draw(clubs, pools, true, seed);
    }

    static List<Entrant> plain(int n) {
        return IntStream.range(0, n)
                .mapToObj(i -> club("c%02d".formatted(i), "", 0))
                .toList();
    }

    @Test
    void eleven_clubs_in_three_pools_make_4_4_3() {
        assertThat(PoolDraw.sizes(11, 3)).containsExactly(4, 4, 3);
        assertThat(drawn(plain(11), 3, "s").pools())
                .extracting(p -> p.name() + p.clubs().size())
                .containsExactly("A4", "B4", "C3");
    }

    @Test
    void seeds_go_down_and_back_up_passing_over_full_pools() {
        List<Entrant> clubs = IntStream.rangeClosed(1, 11)
                .mapToObj(i -> club("c%02d".formatted(i), "", i))
                .toList();
        assertThat(drawn(clubs, 3, "s").intoPools())
                .extracting(DrawStep::chosen)
                .containsExactly("A", "B", "C", "C", "B", "A", "A", "B", "C", "B", "A");
    }

    @Test
    void the_order_of_the_entries_does_not_matter() {
        List<Entrant> clubs = new ArrayList<>(plain(9));
        clubs.add(club("t1", "Ashford", 1));
        clubs.add(club("t2", " ashford ", 0));
        PoolDrawResult first = PoolDraw.draw(clubs, 3, true, "owls");
        for (int i = 0; i < 5; i++) {
            Collections.shuffle(clubs, new Random(i));
            assertThat(PoolDraw.draw(clubs, 3, true, "owls")).isEqualTo(first);
        }
        assertThat(PoolDraw.draw(clubs, 3, true, "owls again")).isNotEqualTo(first);
    }

    /** Judge: the steps done again with nothing but hashes and remainders. */
    @Test
    void every_step_can_be_done_again_from_the_record() {
        List<Entrant> clubs = new ArrayList<>(plain(6));
        clubs.addAll(List.of(
                club("x1", "X", 2), club("x2", "X", 0), club("x3", "X", 0), club("y1", "Y", 1), club("y2", "Y", 0)));
        PoolDrawResult.Drawn drawn = drawn(clubs, 3, "seven owls");
        int replayed = 0;
        for (DrawStep step : drawn.steps()) {
            if (step.how() == DrawStep.How.DRAWN) {
                BigInteger sum =
                        step.choices().stream().map(DrawStep.Choice::weight).reduce(BigInteger.ZERO, BigInteger::add);
                byte[] hash = PublicLot.sha256("seven owls\n" + step.purpose() + "\n" + step.hash());
                assertThat(new BigInteger(1, hash).mod(sum)).isEqualTo(step.drawn());
                replayed++;
            }
        }
        assertThat(replayed).isGreaterThan(12);
        assertThat(drawn.intoPools()).extracting(DrawStep::subject).hasSize(11).doesNotHaveDuplicates();
    }

    @Test
    void more_clubs_of_a_town_than_pools_meet_in_round_one_and_the_draw_says_so() {
        List<Entrant> clubs = new ArrayList<>(plain(5));
        clubs.addAll(List.of(club("x1", "X", 0), club("x2", "X", 0), club("x3", "X", 0)));
        for (int seed = 0; seed < 50; seed++) {
            assertThat(drawn(clubs, 2, "s" + seed).sharedTowns())
                    .singleElement()
                    .satisfies(shared -> {
                        assertThat(shared.cause()).isEqualTo(SharedTown.Cause.MORE_CLUBS_THAN_POOLS);
                        assertThat(shared.clubs()).hasSize(2);
                        assertThat(shared.rounds()).containsExactly(1);
                    });
        }
    }

    @Test
    void seeds_of_one_town_that_the_rule_puts_together_are_named() {
        List<Entrant> clubs = new ArrayList<>(plain(4));
        clubs.addAll(List.of(club("a", "X", 1), club("b", "", 2), club("c", "", 3), club("d", "X", 4)));
        assertThat(drawn(clubs, 2, "s").sharedTowns())
                .singleElement()
                .isEqualTo(new SharedTown(
                        SharedTown.Cause.SEEDS,
                        "A",
                        "X",
                        drawn(clubs, 2, "s").pools().get(0).clubs().stream()
                                .filter(c -> c.code().equals("a") || c.code().equals("d"))
                                .toList(),
                        List.of(1)));
    }

    @Test
    void towns_may_share_a_pool_where_nobody_asked_to_keep_them_apart() {
        List<Entrant> clubs = List.of(club("a", "X", 0), club("b", "X", 0), club("c", "", 0), club("d", "", 0));
        long together = IntStream.range(0, 200)
                .mapToObj(i -> (PoolDrawResult.Drawn) PoolDraw.draw(clubs, 2, false, "s" + i))
                .filter(d -> d.pools().stream()
                        .anyMatch(p -> p.clubs().containsAll(List.of(ClubId.of("a"), ClubId.of("b")))))
                .peek(d -> assertThat(d.sharedTowns()).isEmpty())
                .count();
        assertThat(together).isBetween(40L, 95L);
    }

    @Test
    void refuses_with_every_reason_at_once() {
        List<Entrant> clubs = List.of(club("a", "", 1), club("a", "", 1), club("b", "", 0));
        assertThat(PoolDraw.draw(clubs, 2, true, " "))
                .isEqualTo(new PoolDrawResult.Refused(List.of(
                        DrawFault.of(DrawFault.Code.NO_SPOKEN_SEED, ""),
                        DrawFault.of(DrawFault.Code.CLUB_TWICE, "a"),
                        new DrawFault(DrawFault.Code.SEED_TWICE, "a", 1, 0),
                        DrawFault.of(DrawFault.Code.POOL_TOO_SMALL, 3, 4))));
    }

    @Test
    void refuses_no_pool_too_many_and_too_large() {
        assertThat(code(plain(8), 0)).isEqualTo(DrawFault.Code.NO_POOL);
        assertThat(code(plain(60), 27)).isEqualTo(DrawFault.Code.TOO_MANY_POOLS);
        assertThat(code(plain(17), 1)).isEqualTo(DrawFault.Code.POOL_TOO_LARGE);
        assertThat(code(plain(3), 2)).isEqualTo(DrawFault.Code.POOL_TOO_SMALL);
    }

    private static DrawFault.Code code(List<Entrant> clubs, int pools) {
        return ((PoolDrawResult.Refused) PoolDraw.draw(clubs, pools, true, "s"))
                .faults()
                .get(0)
                .code();
    }

    /** A large event with many towns: the count must stay within its limit. */
    @Test
    void sixty_four_clubs_of_sixteen_towns_are_kept_apart() {
        List<Entrant> clubs = new ArrayList<>();
        for (int i = 0; i < 64; i++) {
            clubs.add(club("c%02d".formatted(i), "town" + i % 16, i < 16 ? i + 1 : 0));
        }
        assertThat(drawn(clubs, 16, "s").sharedTowns()).isEmpty();
        assertThat(drawn(clubs, 8, "s").sharedTowns()).isEmpty();
    }
}
