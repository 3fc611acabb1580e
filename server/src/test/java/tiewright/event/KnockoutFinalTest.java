package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KnockoutFinalTest {
    private static final String POOLS = "ABCD";

    private static Days day() {
        Days day = Days.aDay();
        for (char pool : POOLS.toCharArray()) {
            day.clubs(pool + "1", pool + "2").poolTie("P" + pool, "" + pool, 1, pool + "1", pool + "2");
        }
        return day.knockoutTie("S1", 1, "A-1", "B-1").knockoutTie("S2", 1, "C-1", "D-1");
    }

    private static String of(Days day) {
        return KnockoutFinal.of(day.event().ties().values())
                .map(tie -> tie.id().code())
                .orElse("none");
    }

    @Test
    void is_the_tie_of_the_winners_and_not_the_one_for_third_place() {
        assertThat(of(day().knockoutTie("T", 2, "loser-S1", "loser-S2").knockoutTie("F", 2, "winner-S1", "winner-S2")))
                .isEqualTo("F");
    }

    /** Two ties of the last round: the one to which ties lead, wherever it stands. */
    @Test
    void is_the_one_that_most_ties_lead_to() {
        Days places = day().knockoutTie("Q", 2, "A-2", "B-2").knockoutTie("F", 2, "winner-S1", "winner-S2");
        assertThat(of(places)).isEqualTo("F");
        Days after = day().knockoutTie("F", 2, "winner-S1", "winner-S2").knockoutTie("Q", 2, "A-2", "B-2");
        assertThat(of(after)).isEqualTo("F");
    }

    @Test
    void is_none_without_a_knockout() {
        assertThat(of(Days.aDay().clubs("A", "B").poolTie("P", "A", 1, "A", "B")))
                .isEqualTo("none");
    }

    @Test
    void a_tie_of_losers_is_one_in_which_either_side_lost_before() {
        Days day = day().knockoutTie("M", 2, "winner-S1", "loser-S2").knockoutTie("F", 2, "winner-S1", "winner-S2");
        assertThat(day.event().tie(TieId.of("M")).orElseThrow().isOfLosers()).isTrue();
        assertThat(day.event().tie(TieId.of("F")).orElseThrow().isOfLosers()).isFalse();
    }
}
