package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

class AwardedTest {
    private static final Format ELEVEN = Format.sideOut(11);

    /** USA Pickleball rulebook 2024, 12.F: best of three to 11; the side that leads 10-5 in game 1 retires. */
    @Test
    void the_published_retirement() {
        assertThat(Awarded.lifted(ELEVEN, 3, List.of(new Score(10, 5)), SideNo.ONE))
                .containsExactly(new Score(10, 12), new Score(0, 11));
        assertThat(Awarded.lifted(ELEVEN, 3, List.of(new Score(5, 10)), SideNo.TWO))
                .containsExactly(new Score(12, 10), new Score(11, 0));
    }

    @Test
    void a_trailing_side_retires() {
        assertThat(Awarded.lifted(ELEVEN, 1, List.of(new Score(3, 6)), SideNo.ONE))
                .containsExactly(new Score(3, 11));
        assertThat(Awarded.lifted(ELEVEN, 1, List.of(new Score(13, 13)), SideNo.TWO))
                .containsExactly(new Score(15, 13));
    }

    @Test
    void finished_games_stay() {
        assertThat(Awarded.lifted(ELEVEN, 3, List.of(new Score(11, 9), new Score(2, 1)), SideNo.ONE))
                .containsExactly(new Score(11, 9), new Score(2, 11), new Score(0, 11));
        assertThat(Awarded.lifted(ELEVEN, 3, List.of(new Score(9, 11), new Score(2, 1)), SideNo.ONE))
                .containsExactly(new Score(9, 11), new Score(2, 11));
    }

    @Test
    void cap_and_by_one_bound_the_lift() {
        Format capped = Format.parse("rally-21-cap-30").orElseThrow();
        assertThat(Awarded.lifted(capped, new Score(29, 29), SideNo.ONE)).isEqualTo(new Score(29, 30));
        Format byOne = Format.parse("rally-21-by-1").orElseThrow();
        assertThat(Awarded.lifted(byOne, new Score(20, 4), SideNo.ONE)).isEqualTo(new Score(20, 21));
    }

    @Test
    void a_walkover_is_won_to_nil() {
        assertThat(Awarded.walkover(ELEVEN, 1, SideNo.TWO)).containsExactly(new Score(11, 0));
        assertThat(Awarded.walkover(ELEVEN, 5, SideNo.ONE))
                .containsExactly(new Score(0, 11), new Score(0, 11), new Score(0, 11));
    }

    @Test
    void refuses_what_cannot_have_stood() {
        assertThatThrownBy(() -> Awarded.lifted(ELEVEN, 1, List.of(new Score(11, 4)), SideNo.ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ALREADY_WON");
    }

    @Test
    void what_is_made_up_is_always_a_legal_rubber_of_the_other_side() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        int tried = 0;
        while (tried < 2000) {
            Format format = RandomFormat.of(random, 21);
            Score stood = new Score(random.nextInt(24), random.nextInt(24));
            if (Legality.retired(format, stood).isEmpty()) {
                tried++;
                List<Score> games = Awarded.lifted(format, 3, List.of(stood), SideNo.TWO);
                assertThat(Legality.rubber(format, 3, games))
                        .as("%s: %s at %s", seed, format.code(), stood)
                        .isEmpty();
                assertThat(games).as("%s", seed).hasSize(2).allMatch(game -> game.home() > game.away());
                assertThat(games.get(0).away()).as("%s", seed).isEqualTo(stood.away());
            }
        }
    }
}
