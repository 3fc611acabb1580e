package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.event.ClubId;

/**
 * A withdrawal under each published treatment: all results deleted (Lithuanian badminton federation, team rules 7.12; BWF
 * practice, second-hand), played ties kept, or the ties left awarded (common practice, no source).
 */
class WithdrawalTest {
    private static final TableRules RULES = Rules.of("overall-difference", "1/0/0", Rules.shape(4, true, 1, 11));

    /** D has lost to A, beaten B, and withdraws before the tie against C. */
    private static Pool pool() {
        return Pool.of("A", "B", "C", "D")
                .tie("A", "B", "11-5", "11-5", "11-5", "5-11")
                .tie("B", "C", "11-6", "6-11", "11-6", "11-6")
                .tie("A", "C", "11-9", "11-9", "9-11", "11-9")
                .tie("A", "D", "11-3", "11-3", "11-3", "11-3")
                .tie("D", "B", "11-8", "11-8", "11-8", "8-11")
                .unfinished("C", "D");
    }

    private static Row row(Table table, String club) {
        return table.row(ClubId.of(club)).orElseThrow();
    }

    @Test
    void an_annulled_club_has_no_row_and_gives_nobody_anything() {
        Table table = pool().withdrew("D", Treatment.ANNUL).table(RULES);
        assertThat(Pool.order(table)).isEqualTo("A B C");
        assertThat(row(table, "A").tiesWon()).isEqualTo(2);
        assertThat(row(table, "A").pointsAgainst()).isEqualTo(3 * 5 + 11 + 3 * 9 + 11);
        assertThat(row(table, "B").tiesLost()).isEqualTo(1);
        assertThat(table.isProvisional()).isFalse();
    }

    @Test
    void a_kept_club_keeps_its_played_ties_and_the_others_do_not_count() {
        Table table = pool().withdrew("D", Treatment.KEEP).table(RULES);
        assertThat(row(table, "D").tiesWon()).isEqualTo(1);
        assertThat(row(table, "D").tiesLost()).isEqualTo(1);
        assertThat(row(table, "C").tiesWon()).isZero();
        assertThat(row(table, "C").tiesLost()).isEqualTo(2);
        assertThat(table.isProvisional()).isFalse();
    }

    @Test
    void an_award_gives_every_rubber_of_an_unplayed_tie_nil_to_the_target_and_no_decider() {
        Table kept = pool().withdrew("D", Treatment.KEEP).table(RULES);
        Table table = pool().withdrew("D", Treatment.AWARD).table(RULES);
        assertThat(row(table, "C").tiesWon()).isEqualTo(1);
        assertThat(row(table, "C").rubbersWon()).isEqualTo(row(kept, "C").rubbersWon() + 4);
        assertThat(row(table, "C").gamesWon()).isEqualTo(row(kept, "C").gamesWon() + 4);
        assertThat(row(table, "C").pointsFor()).isEqualTo(row(kept, "C").pointsFor() + 44);
        assertThat(row(table, "C").pointsAgainst()).isEqualTo(row(kept, "C").pointsAgainst());
        assertThat(row(table, "D").rubbersLost()).isEqualTo(row(kept, "D").rubbersLost() + 4);
        assertThat(row(table, "D").tiesLost()).isEqualTo(2);
    }

    @Test
    void an_award_over_best_of_three_gives_two_games_a_rubber() {
        TableRules rules = Rules.of("overall-difference", "1/0/0", Rules.shape(4, true, 2, 11));
        Table table = Pool.of("C", "D")
                .unfinished("D", "C")
                .withdrew("D", Treatment.AWARD)
                .table(rules);
        assertThat(row(table, "C").gamesWon()).isEqualTo(8);
        assertThat(row(table, "C").pointsFor()).isEqualTo(88);
    }

    /** Our reading: what was decided before the withdrawal stands, the rest goes to the other club, the decider too. */
    @Test
    void an_award_leaves_the_rubbers_that_were_decided() {
        Table table = Pool.of("C", "D")
                .unfinished("D", "C", "11-4", "11-4")
                .withdrew("D", Treatment.AWARD)
                .table(RULES);
        assertThat(row(table, "C").rubbersWon()).isEqualTo(3);
        assertThat(row(table, "C").rubbersLost()).isEqualTo(2);
        assertThat(row(table, "C").pointsFor()).isEqualTo(4 + 4 + 33);
        assertThat(row(table, "C").tiesWon()).isEqualTo(1);
    }

    /** Our reading: nobody came, so both have lost the tie and nobody has a rubber. */
    @Test
    void an_awarded_tie_of_two_withdrawn_clubs_is_lost_by_both() {
        Table table = Pool.of("A", "C", "D")
                .unfinished("D", "C")
                .unfinished("A", "C")
                .withdrew("D", Treatment.AWARD)
                .withdrew("C", Treatment.AWARD)
                .table(RULES);
        assertThat(row(table, "D").tiesLost()).isEqualTo(1);
        assertThat(row(table, "C").tiesLost()).isEqualTo(2);
        assertThat(row(table, "D").rubbersLost()).isZero();
        assertThat(row(table, "A").rubbersWon()).isEqualTo(4);
    }

    /** Our reading: what is kept as it was played leaves nothing to award, whichever of the two clubs it is. */
    @ParameterizedTest
    @CsvSource({"KEEP, AWARD", "AWARD, KEEP", "KEEP, KEEP"})
    void of_two_withdrawn_clubs_a_kept_one_leaves_their_tie_out(Treatment one, Treatment other) {
        Table table = Pool.of("A", "C", "D")
                .unfinished("D", "C", "11-2")
                .tie("A", "C", "11-2", "11-2", "11-2", "2-11")
                .withdrew("D", one)
                .withdrew("C", other)
                .table(RULES);
        assertThat(row(table, "D").tiesLost()).isZero();
        assertThat(row(table, "D").rubbersWon()).isZero();
        assertThat(row(table, "C").tiesLost()).isEqualTo(1);
        assertThat(row(table, "C").rubbersLost()).isEqualTo(3);
        assertThat(table.isProvisional()).isFalse();
    }

    @Test
    void a_tie_that_goes_on_counts_for_nothing_yet() {
        Table table =
                Pool.of("A", "B").unfinished("A", "B", "11-2", "11-2", "11-2").table(RULES);
        assertThat(row(table, "A").rubbersWon()).isZero();
        assertThat(table.tiesLeft()).isEqualTo(1);
        assertThat(table.isProvisional()).isTrue();
    }
}
