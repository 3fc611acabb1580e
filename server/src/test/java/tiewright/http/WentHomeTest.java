package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.conditions.Withdrawal;
import tiewright.desk.RecordCard;
import tiewright.desk.WithdrawClub;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A club goes home before its semi-final: the other club goes on, and nobody is told of a tie that was played. */
class WentHomeTest {
    private static Days day() {
        return Days.aDay()
                .clubs("N", "S", "E", "W")
                .courts("1", "2")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("SF2", 1, "E", "W")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .timed("SF1", "13:15", "1")
                .timed("SF2", "13:15", "2")
                .timed("F", "14:45", "1")
                .by(Days.referee())
                .at("11:00")
                .does(new WithdrawClub(ClubId.of("W"), Withdrawal.KEEP, "They went home.", "R. Referee"));
    }

    @Test
    void its_tie_did_not_just_end_and_has_no_score_to_read() {
        try (Served served = Served.of(day(), Days.moment("11:05"))) {
            assertThat(served.ledger
                            .event()
                            .tie(TieId.of("F"))
                            .orElseThrow()
                            .away()
                            .club())
                    .as("the other club goes on")
                    .contains(ClubId.of("E"));
            assertThat(served.stranger().get("/").text())
                    .doesNotContain("Just ended")
                    .doesNotContain("Club E 4");
            assertThat(served.stranger().get("/ties").text())
                    .contains("Club W withdrew: not played")
                    .doesNotContain("Club E 4", "Club E won");
            assertThat(served.captain("E").get("/captain").text())
                    .doesNotContain("4–0")
                    .doesNotContain("won SF2");
            assertThat(served.stranger().get("/club/W").text())
                    .contains("Club W withdrew: not played")
                    .doesNotContain("Club E won");
        }
    }

    @Test
    void its_notice_says_in_words_what_becomes_of_its_ties() {
        try (Served served = Served.of(day(), Days.moment("11:05"))) {
            assertThat(served.stranger().get("/notices").text())
                    .contains("Withdrawal of Club W. Its finished ties stand; the others are not played. Ruling 1.");
        }
    }

    @Test
    void a_tie_that_was_played_before_keeps_its_score() {
        Days day = Days.oneTie().at("10:00").opened("A1");
        for (int rubber = 1; rubber <= 4; rubber++) {
            day.does(new RecordCard(TieId.of("A1"), RubberNo.of(rubber), Days.games("11-5"), How.PLAYED));
        }
        day.by(Days.referee()).does(new WithdrawClub(ClubId.of("S"), Withdrawal.KEEP, "They went home.", "R. Referee"));
        try (Served served = Served.of(day, Days.moment("11:05"))) {
            assertThat(served.stranger().get("/").text()).contains("Club N 4 Club S 0");
            assertThat(served.stranger().get("/ties").text())
                    .contains("Club N won")
                    .doesNotContain("not played");
        }
    }
}
