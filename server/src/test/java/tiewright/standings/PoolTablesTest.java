package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.Side;

/** How a pool of an event becomes the input of a table. */
class PoolTablesTest {
    private final Days day = Days.oneTie()
            .with(Setting.RUBBERS, "3")
            .with(Setting.DECIDER, "any-two")
            .card("A1", "1", "15-5")
            .card("A1", "3", "", How.VOID);

    private void withdraws(String club) {
        day.fact(new OfficialFact.ClubWithdrawn(ClubId.of(club), Optional.empty(), Withdrawal.AWARD, 1));
    }

    private Row row(String club) {
        return Standings.of(PoolTables.input(day.event(), "A"))
                .row(ClubId.of(club))
                .orElseThrow();
    }

    /** One rubber won, one void, the last one awarded: that is level, and the decider goes to the club that stayed. */
    @Test
    void a_void_rubber_of_three_leaves_a_decider_to_be_awarded() {
        withdraws("N");
        assertThat(row("S").tiesWon()).isEqualTo(1);
        assertThat(row("S").rubbersWon()).isEqualTo(2);
        assertThat(row("N").rubbersWon()).isEqualTo(1);
    }

    @Test
    void no_decider_is_awarded_where_the_rubbers_are_not_level() {
        withdraws("S");
        assertThat(row("N").tiesWon()).isEqualTo(1);
        assertThat(row("N").rubbersWon()).isEqualTo(2);
    }

    @Test
    void a_tie_with_a_void_rubber_of_three_can_end_in_the_decider_and_not_drawn() {
        day.card("A1", "2", "5-15");
        TableInput input = PoolTables.input(day.event(), "A");
        List<OpenOutcome> outcomes =
                OpenOutcomes.of(input.ties().get(0), new TieCounter(input.clubs(), input.rules()), input.rules());
        assertThat(outcomes)
                .extracting(outcome -> outcome.tie().result())
                .containsExactlyInAnyOrder(Result.WON, Result.LOST);
    }

    @Test
    void a_tie_of_four_rubbers_that_all_count_needs_no_decider_when_it_is_not_level() {
        Days four = Days.oneTie().cards("A1", "15-0", "15-0", "15-0", "0-15");
        assertThat(Standings.of(PoolTables.input(four.event(), "A"))
                        .row(ClubId.of("N"))
                        .orElseThrow()
                        .rubbersWon())
                .isEqualTo(3);
        assertThat(four.event().progress(four.tie("A1")).winner()).contains(Side.HOME);
    }
}
