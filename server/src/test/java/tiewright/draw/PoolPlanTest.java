package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.TieId;

class PoolPlanTest {
    private static List<ClubId> clubs(String... codes) {
        return Stream.of(codes).map(ClubId::of).toList();
    }

    /** FIDE Handbook C.05, Annex 1, table for 4: 1-4 2-3 / 4-3 1-2 / 2-4 3-1. */
    @Test
    void numbers_the_ties_in_the_order_of_the_table() {
        assertThat(PoolPlan.ties("B", clubs("W", "X", "Y", "Z")))
                .extracting(t -> t.tie() + " round " + t.round() + " " + t.home() + "-" + t.away())
                .containsExactly(
                        "B1 round 1 W-Z",
                        "B2 round 1 X-Y",
                        "B3 round 2 Z-Y",
                        "B4 round 2 W-X",
                        "B5 round 3 X-Z",
                        "B6 round 3 Y-W");
    }

    @Test
    void tie_codes_of_all_pools_and_the_knockout_differ() {
        assertThat(List.of(PoolPlan.tie("1", 11), PoolPlan.tie("11", 1), PoolPlan.tie("P", 3), PoolPlan.tie("SF", 1)))
                .doesNotHaveDuplicates()
                .doesNotContain(TieId.of("P3"), TieId.of("SF1"));
    }

    @Test
    void refuses_a_club_named_twice() {
        assertThatThrownBy(() -> PoolPlan.ties("A", clubs("W", "X", "W"))).isInstanceOf(IllegalArgumentException.class);
    }
}
