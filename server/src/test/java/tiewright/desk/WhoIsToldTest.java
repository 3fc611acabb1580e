package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Whom a ruling concerns that begins ties again: those who can stand there, and nobody who no longer can. */
class WhoIsToldTest {
    private final Days day = Days.aDay()
            .with(Setting.RUBBERS, "1")
            .clubs("A", "B", "C", "D", "E", "F", "G")
            .courts("1", "2");

    private void play(String tie, String pool, String home, String away, String score) {
        day.poolTie(tie, pool, 1, home, away).opened(tie).cards(tie, score);
    }

    /** A beat all, B beat C and D, C beat D: with 5-11 against B in P.1, B is first, A second; C and D stay where they are. */
    private void pools(String last) {
        play("P.1", "P", "A", "B", "11-5");
        play("P.2", "P", "A", "C", "11-5");
        play("P.3", "P", "A", "D", "11-5");
        play("P.4", "P", "B", "C", "11-5");
        play("P.5", "P", "B", "D", "11-5");
        play("P.6", "P", "C", "D", last);
        play("Q.1", "Q", "E", "F", "11-5");
        play("Q.2", "Q", "E", "G", "11-5");
        play("Q.3", "Q", "F", "G", "11-5");
        day.knockoutTie("SF1", 1, "P-1", "Q-2")
                .knockoutTie("SF2", 1, "Q-1", "P-2")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .timed("SF1", "13:00", "1")
                .timed("SF2", "13:00", "2");
    }

    private List<String> told(String tie, String score) {
        day.by(Days.referee())
                .does(new DecideCorrection(
                        new Correction(TieId.of(tie), RubberNo.of(1), Days.games(score), How.PLAYED),
                        CorrectionChoice.REPLAY,
                        "",
                        "swapped",
                        "R. Referee"));
        return day.event().notices().get(0).notice().clubs().stream()
                .map(ClubId::code)
                .toList();
    }

    @Test
    void a_club_that_can_no_longer_come_to_a_tie_that_begins_again_is_not_told() {
        pools("11-5");
        day.does(new SignTable("P", "R")).does(new SignTable("Q", "R"));
        assertThat(told("P.1", "5-11")).containsExactly("A", "B", "E", "F");
    }

    /** With 5-11 in P.4 A is first as before, and C second instead of B. */
    @Test
    void a_club_that_comes_to_it_now_is_told_and_the_one_that_lost_it_too() {
        pools("11-5");
        day.does(new SignTable("P", "R")).does(new SignTable("Q", "R"));
        assertThat(told("P.4", "5-11")).contains("B", "C", "E").doesNotContain("D");
    }
}
