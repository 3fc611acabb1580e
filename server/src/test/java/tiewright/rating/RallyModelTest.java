package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.scoring.Format;

class RallyModelTest {
    /** Even serve and return, 50 rallies in 100 and so many more: worked out with plain recursion, no published table known. */
    @ParameterizedTest
    @CsvSource({"1,55,56,55", "2,60.5,61.5,59", "3,66,67,63", "5,75,77,72", "8,86,88,82", "10,91,93,87"})
    void small_edges_in_rallies_are_large_edges_in_games(double edge, double low, double high, double rally15) {
        assertThat(100 * RallyModel.rubberChance(Format.sideOut(11), 1, edge)).isBetween(low, high);
        assertThat(100 * RallyModel.rubberChance(Format.rally(15), 1, edge)).isCloseTo(rally15, within(1.0));
    }

    @Test
    void equal_pairs_are_even_in_every_format() {
        for (Format format : new Format[] {
            Format.sideOut(11),
            Format.rally(21),
            Format.parse("rally-11-cap-13-serve-last").orElseThrow()
        }) {
            assertThat(RallyModel.rubberChance(format, 3, 0)).isCloseTo(0.5, within(1e-12));
            assertThat(RallyModel.rubberChance(format, 1, 4) + RallyModel.rubberChance(format, 1, -4))
                    .isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void an_edge_beyond_all_measure_is_still_a_chance() {
        assertThat(RallyModel.rubberChance(Format.sideOut(11), 1, 1e6)).isBetween(0.999, 1.0);
        assertThat(RallyModel.rubberChance(Format.sideOut(11), 1, -1e6)).isBetween(0.0, 0.001);
    }
}
