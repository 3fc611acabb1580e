package tiewright.saturday;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.Seed;

/**
 * What one club notes, and how often it replaces a sheet, shows nowhere outside the club; {@code -Dtwins=} chooses how many days,
 * {@code -Dseed=} which.
 */
class TwinDaysTest {
    @Test
    void twin_days_are_the_same_for_everybody_else() {
        long first = Long.getLong("seed", 1);
        for (int day = 0; day < Integer.getInteger("twins", 2); day++) {
            assertThat(new TwinDay(first + day, 3, 80).firstDifference()).isEmpty();
        }
    }

    @Test
    void captains_who_ask_the_same_draw_differently_and_again_alike() {
        assertThat(new Draws(Seed.fresh().value()).look()).isEmpty();
    }
}
