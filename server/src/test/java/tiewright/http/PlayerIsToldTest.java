package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.OfficialFact;

/** What a player's page says of when the player may be needed, and of what was played. */
class PlayerIsToldTest {
    /** Two rubbers each are decided; the tie is at 2-2 unless a test says otherwise. Club E is the next opponent, at 12:00. */
    private static Days day() {
        return Days.aDay()
                .clubs("N", "S", "E")
                .courts("1", "2")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "N", "E")
                .timed("A1", "10:00", "1")
                .timed("A2", "12:00", "1")
                .opened("A1");
    }

    private static Served served(Days day, String at) {
        return Served.of(day, Days.moment(at));
    }

    private static String page(Days day, String at, String player) {
        try (Served served = served(day, at)) {
            return served.stranger().get("/player/" + player).text();
        }
    }

    @Test
    void stays_near_while_the_tie_is_level_and_the_deciders_pairs_are_not_open() {
        Days level = day().cards("A1", "11-5", "11-6", "4-11", "3-11");
        assertThat(page(level, "10:40", "N1"))
                .contains("goes to a decider", "stay near")
                .doesNotContainIgnoringCase("free until");
    }

    @Test
    void stays_near_while_the_tie_may_still_come_to_a_decider() {
        Days open = day().card("A1", "1", "11-5");
        assertThat(page(open, "10:40", "N1"))
                .contains("may still come to a decider")
                .doesNotContainIgnoringCase("free until");
    }

    @Test
    void is_free_once_the_tie_can_no_longer_end_level() {
        Days decided = day().cards("A1", "11-5", "11-6", "11-4");
        assertThat(page(decided, "10:40", "N1")).contains("No rubber of yours is left", "Free until 12:00");
    }

    @Test
    void reads_of_a_start_that_has_passed_that_it_was_to_be_then() {
        Days over = day().cards("A1", "11-5", "11-6", "11-4", "11-3");
        assertThat(page(over, "11:59", "N1")).contains("Free until 12:00");
        assertThat(page(over, "12:00", "N1"))
                .contains("was to start at 12:00: stay near")
                .doesNotContainIgnoringCase("free until");
    }

    private static Days semiFinal(String... games) {
        return Days.aDay()
                .clubs("N", "S", "E")
                .courts("1", "2")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF1", "E")
                .knockoutTie("T3", 2, "loser-SF1", "E")
                .timed("SF1", "10:00", "1")
                .timed("F", "12:00", "1")
                .opened("SF1")
                .cards("SF1", games);
    }

    @Test
    void stays_while_the_club_may_still_come_to_a_tie_that_has_no_clubs_yet() {
        Days won = semiFinal("11-5", "11-6", "11-4", "11-3");
        assertThat(page(won, "10:50", "N1"))
                .contains("Your club may still play: winner of SF1 v Club E, not before 12:00.");
        assertThat(page(won, "10:50", "S1"))
                .contains("Your club may still play: loser of SF1 v Club E, at a time that is not set yet.");
    }

    /** The final is fed by the winner of a tie and by whoever comes back from losing it. */
    @Test
    void stays_who_lost_a_tie_and_may_come_back_by_another_way() {
        Days back = Days.aDay()
                .clubs("N", "S", "E")
                .courts("1")
                .knockoutTie("W", 1, "N", "S")
                .knockoutTie("B", 2, "loser-W", "E")
                .knockoutTie("X", 3, "winner-W", "winner-B")
                .knockoutTie("F", 4, "winner-X", "E")
                .timed("W", "10:00", "1")
                .timed("F", "15:00", "1")
                .opened("W")
                .cards("W", "11-5", "11-6", "11-4", "11-3");
        assertThat(page(back, "10:50", "S1"))
                .contains("Your club may still play: winner of X v Club E, not before 15:00.");
    }

    @Test
    void goes_home_when_nothing_can_come() {
        Days gone = semiFinal("11-5", "11-6", "11-4", "11-3")
                .fact(new OfficialFact.RulingGiven(1, "Club S", "Withdrawn.", "They went home.", "R. Referee"))
                .fact(new OfficialFact.ClubWithdrawn(ClubId.of("S"), Optional.empty(), Withdrawal.KEEP, 1));
        assertThat(page(gone, "10:50", "S1"))
                .contains("Club S withdrew (ruling 1).")
                .doesNotContain("may still play");
        Days noThird = Days.aDay()
                .clubs("N", "S", "E")
                .courts("1")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF1", "E")
                .timed("SF1", "10:00", "1")
                .opened("SF1")
                .cards("SF1", "11-5", "11-6", "11-4", "11-3");
        assertThat(page(noThird, "10:50", "S1"))
                .contains("No tie of your club is left")
                .doesNotContain("may still play");
    }

    @Test
    void reads_results_from_the_own_side_with_won_or_lost() {
        Days day = day().card("A1", "1", "11-7");
        assertThat(page(day, "10:40", "N1")).contains("won 11-7");
        assertThat(page(day, "10:40", "S1")).contains("lost 7-11");
    }

    @Test
    void a_withdrawn_club_is_in_no_list_of_what_is_to_come_and_the_table_says_so() {
        Days day = day().cards("A1", "11-5", "11-6", "11-4", "11-3")
                .fact(new OfficialFact.RulingGiven(1, "Club E", "Withdrawn.", "They went home.", "R. Referee"))
                .fact(new OfficialFact.ClubWithdrawn(ClubId.of("E"), Optional.empty(), Withdrawal.ANNUL, 1));
        try (Served served = served(day, "11:30")) {
            assertThat(served.captain("N").get("/captain").body()).doesNotContain("/captain/sheet/A2");
            assertThat(served.stranger().get("/player/N1").text()).doesNotContain("12:00");
            assertThat(served.stranger().get("/").text()).doesNotContain("Next: Club N v Club E");
            assertThat(served.as(tiewright.event.Role.DESK).get("/desk").text()).doesNotContain("Sheets, until");
            assertThat(served.stranger().get("/tables").text()).contains("Club E withdrew (ruling 1)");
            assertThat(served.stranger().get("/ties").text()).contains("Club E withdrew: not played");
        }
    }
}
