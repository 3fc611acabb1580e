package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

class TieOddsTest {
    @Test
    void four_even_rubbers_finish_level_three_times_in_eight() {
        TieOdds odds = TieOdds.of(0.5, 0.5, 0.5, 0.5);
        assertThat(odds.ahead()).isEqualTo(5.0 / 16);
        assertThat(odds.level()).isEqualTo(6.0 / 16);
        assertThat(odds.win(0.5)).isEqualTo(0.5);
    }

    /** Worked by hand: 1/8 + 3/8 x 1/2. */
    @Test
    void three_even_rubbers_and_one_given_away_win_five_ties_in_sixteen() {
        assertThat(TieOdds.of(0.5, 0.5, 0.5, 0).win(0.5)).isEqualTo(0.3125);
    }

    @Test
    void an_odd_number_of_rubbers_never_finishes_level() {
        assertThat(TieOdds.of(0.5, 0.5, 0.5)).isEqualTo(new TieOdds(0.5, 0));
    }

    @Test
    void no_rubber_at_all_is_level() {
        assertThat(TieOdds.of()).isEqualTo(new TieOdds(0, 1));
    }

    @Test
    void refuses_what_is_no_chance() {
        assertThatThrownBy(() -> TieOdds.of(0.5, 1.01)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TieOdds.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void agrees_with_adding_up_every_outcome() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 200; i++) {
            double[] chances = random.doubles(1 + random.nextInt(7)).toArray();
            double decider = random.nextDouble();
            double sum = 0;
            for (int outcome = 0; outcome < 1 << chances.length; outcome++) {
                double chance = 1;
                for (int rubber = 0; rubber < chances.length; rubber++) {
                    chance *= (outcome & 1 << rubber) != 0 ? chances[rubber] : 1 - chances[rubber];
                }
                int won = Integer.bitCount(outcome);
                sum += 2 * won > chances.length ? chance : 2 * won == chances.length ? chance * decider : 0;
            }
            assertThat(TieOdds.of(chances).win(decider))
                    .as("%s, tie %d", seed, i)
                    .isCloseTo(sum, within(1e-12));
        }
    }
}
