package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.why;

import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** Who has really played, and what the conditions of a final make of it (common practice, no source). */
class EligibilityTest {

    /** A1 with N at home and A2 with S at home are over for some; A3 is to come, and so is the final. */
    private static Days day() {
        return Days.oneTie()
                .poolTie("A2", "A", 2, "S", "N")
                .poolTie("A3", "A", 3, "N", "S")
                .knockoutTie("F", 1, "N", "S")
                .opened("A1")
                .card("A1", "1", "11-5")
                .card("A1", "2", "5-3", How.RETIRED_HOME)
                .card("A1", "3", "", How.WALKOVER_HOME)
                .card("A1", "4", "", How.VOID)
                .opened("A2");
    }

    private static int played(Days day, String player) {
        return Eligibility.tiesPlayed(day.event(), PlayerId.of(player));
    }

    @Test
    void a_tie_counts_for_who_was_on_court_to_the_end_or_until_it_was_given_up() {
        Days day = day();
        assertThat(played(day, "N1")).isEqualTo(1);
        assertThat(played(day, "N4")).isEqualTo(1);
        assertThat(played(day, "S4")).isEqualTo(1);
        assertThat(played(day, "N5")).as("a walkover").isZero();
        assertThat(played(day, "S7")).as("a void rubber").isZero();
    }

    @Test
    void a_tie_counts_on_either_side_and_only_once_its_rubber_has_a_card() {
        Days day = day();
        assertThat(played(day, "S1")).isEqualTo(1);
        day.card("A2", "1", "11-5");
        assertThat(played(day, "S1")).as("at home").isEqualTo(2);
        assertThat(played(day, "N1")).as("away").isEqualTo(2);
        assertThat(played(day, "N3")).isEqualTo(1);
    }

    @Test
    void the_decider_of_a_tie_is_no_second_tie() {
        Days day = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-5", "11-5", "5-11", "5-11")
                .opened(Asked.DECIDER, Sheet.decider(Pair.of("N1", "N3")), Sheet.decider(Pair.of("S1", "S3")))
                .card("A1", "D", "11-9");
        assertThat(played(day, "N1")).isEqualTo(1);
        assertThat(played(day, "S3")).isEqualTo(1);
    }

    @Test
    void in_the_knockout_a_player_needs_as_many_ties_as_the_conditions_want_and_in_a_pool_none() {
        Days day = day().with(Setting.ELIGIBILITY_TIES, "1");
        assertThat(mayPlay(day, "F", "N4")).isTrue();
        assertThat(mayPlay(day, "F", "N5")).isFalse();
        assertThat(mayPlay(day, "A3", "N5")).isTrue();
        day.with(Setting.ELIGIBILITY_TIES, "2");
        assertThat(mayPlay(day, "F", "N4")).isFalse();
        day.with(Setting.ELIGIBILITY_TIES, "0");
        assertThat(mayPlay(day, "F", "N5")).isTrue();
    }

    @Test
    void a_sheet_for_the_final_names_nobody_who_played_too_little() {
        Days day = day().with(Setting.ELIGIBILITY_TIES, "1")
                .timed("F", "14:00", "1")
                .by(Days.captain("N"));
        ExchangeId last = ExchangeId.sheets(TieId.of("F"));
        assertThat(why(day, new SealSheet(last, Asked.N, Asked.straight("N"), Asked.SECRET)))
                .containsOnly("too-few-ties")
                .hasSize(4);
        assertThat(why(day, new SealSheet(last, Asked.N, Asked.sheet("N", "12 34 - -"), Asked.SECRET)))
                .doesNotContain("too-few-ties");
    }

    private static boolean mayPlay(Days day, String tie, String player) {
        return Eligibility.mayPlay(day.event(), day.tie(tie), PlayerId.of(player));
    }
}
