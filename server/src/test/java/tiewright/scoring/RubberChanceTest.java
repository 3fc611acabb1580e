package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

class RubberChanceTest {
    private static final Format ELEVEN = Format.sideOut(11);

    @Test
    void one_game_is_the_mean_over_the_first_server() {
        Chain chain = Chain.of(ELEVEN, .5, .45);
        assertThat(RubberChance.of(ELEVEN, 1, .5, .45))
                .isCloseTo((chain.winChance(SideNo.ONE) + chain.winChance(SideNo.TWO)) / 2, within(1e-15));
    }

    @Test
    void even_sides_are_even() {
        for (int bestOf : new int[] {1, 3, 5}) {
            assertThat(RubberChance.of(ELEVEN, bestOf, .4, .4)).isCloseTo(.5, within(1e-12));
        }
    }

    /** Best of three when the first server does not matter: p^2 (3 - 2p), standard. */
    @Test
    void independent_games_add_up() {
        double p = Chain.of(Format.rally(11), .55, .45).winChance(SideNo.ONE);
        assertThat(RubberChance.of(Format.rally(11), 3, .55, .45)).isCloseTo(p * p * (3 - 2 * p), within(1e-12));
        double five = p * p * p * (1 + 3 * (1 - p) + 6 * (1 - p) * (1 - p));
        assertThat(RubberChance.of(Format.rally(11), 5, .55, .45)).isCloseTo(five, within(1e-12));
    }

    @Test
    void the_first_serve_alternates() {
        Format format = Format.rally(1); // short, so that the serve matters
        double first = Chain.of(format, .8, .7).winChance(SideNo.ONE);
        double second = Chain.of(format, .8, .7).winChance(SideNo.TWO);
        assertThat(first).isGreaterThan(second + .01);
        double expected = first * second + (1 - first) * second * first + first * (1 - second) * first;
        assertThat(RubberChance.of(format, 3, .8, .7, SideNo.ONE)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void swapping_the_sides_swaps_the_chance() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 300; i++) {
            Format format = RandomFormat.of(random, 21);
            double serve1 = 0.1 + 0.8 * random.nextDouble();
            double serve2 = 0.1 + 0.8 * random.nextDouble();
            assertThat(RubberChance.of(format, 3, serve1, serve2))
                    .as("%s: %s", seed, format.code())
                    .isCloseTo(1 - RubberChance.of(format, 3, serve2, serve1), within(1e-11));
        }
    }

    @Test
    void refuses_an_even_number_of_games() {
        assertThatThrownBy(() -> RubberChance.of(ELEVEN, 2, .5, .5)).isInstanceOf(IllegalArgumentException.class);
    }
}
