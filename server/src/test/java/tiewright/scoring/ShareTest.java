package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShareTest {
    private static void interval(int count, int of, double low, double high, double within) {
        Share share = new Share(count, of);
        assertThat(share.low()).isEqualTo(low, within(within));
        assertThat(share.high()).isEqualTo(high, within(within));
    }

    /** R. G. Newcombe, Statistics in Medicine 17:857 (1998), Table I, method 3; the third recomputed. */
    @Test
    void the_interval_is_the_published_one() {
        interval(81, 263, 0.2553, 0.3662, 0.00005);
        interval(15, 148, 0.0624, 0.1605, 0.00005);
        interval(54, 90, 0.496703, 0.695110, 0.0000005);
    }

    @Test
    void it_stays_between_nothing_and_all() {
        assertThat(new Share(0, 5).low()).isZero();
        assertThat(new Share(0, 5).high()).isBetween(0.4, 0.5);
        assertThat(new Share(5, 5).high()).isEqualTo(1);
    }

    @Test
    void more_than_all_or_of_nothing_is_no_share() {
        for (int[] bad : new int[][] {{1, 0}, {6, 5}, {-1, 5}}) {
            assertThatThrownBy(() -> new Share(bad[0], bad[1])).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
