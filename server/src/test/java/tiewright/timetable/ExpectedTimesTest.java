package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A pool of four on two courts with one rubber on each at a time; invented. Slots of 20 minutes by the usual pace. */
class ExpectedTimesTest {
    private static Days day() {
        return Days.aDay()
                .clubs("A", "B", "C", "D")
                .courts("1", "2")
                .poolTie("A-B", "P", 1, "A", "B")
                .poolTie("C-D", "P", 1, "C", "D")
                .poolTie("A-C", "P", 2, "A", "C")
                .poolTie("B-D", "P", 2, "B", "D")
                .poolTie("A-D", "P", 3, "A", "D")
                .knockoutTie("F", 1, "P-1", "P-2")
                .timed("A-B", "09:00", "1")
                .timed("C-D", "09:00", "2")
                .timed("A-C", "10:40", "1")
                .timed("B-D", "10:40", "2")
                .timed("A-D", "12:20", "1")
                .timed("F", "14:00", "1");
    }

    /** All rubbers of a tie on one court: called late, and a card after each so many minutes. */
    private static Days played(Days day, String tie, String court, String called, int minutesEach) {
        LocalTime at = LocalTime.parse(called);
        day.opened(tie).at(called).fact(new PlayFact.CourtCalled(TieId.of(tie), Optional.empty(), court));
        for (int rubber = 1; rubber <= 4; rubber++) {
            at = at.plusMinutes(minutesEach);
            day.at(at.toString()).card(tie, "" + rubber, rubber < 4 ? "11-5" : "5-11");
        }
        return day;
    }

    private static Expected expected(Days day, String now, String tie) {
        return ExpectedTimes.of(day.event(), Days.moment(now)).of(TieId.of(tie)).orElseThrow();
    }

    @Test
    void on_a_day_that_goes_as_planned_a_tie_is_expected_at_its_published_time() {
        Expected expected = expected(day(), "08:30", "A-C");
        assertThat(expected.notBefore()).isEqualTo("10:40");
        assertThat(expected.likelyFrom()).isEqualTo("10:40");
        assertThat(expected.likelyTo()).isBetween(LocalTime.of(10, 40), LocalTime.of(11, 5));
        assertThat(expected.isLate()).isFalse();
    }

    @Test
    void after_three_late_ties_the_ranges_move_and_none_is_before_what_was_published() {
        Days day = day();
        played(day, "A-B", "1", "09:25", 25);
        played(day, "C-D", "2", "09:30", 25);
        played(day, "A-C", "1", "11:20", 25);
        ExpectedTimes before = ExpectedTimes.of(day().event(), Days.moment("08:30"));
        ExpectedTimes after = ExpectedTimes.of(day.event(), Days.moment("13:05"));
        for (String tie : new String[] {"B-D", "A-D", "F"}) {
            Expected now = after.of(TieId.of(tie)).orElseThrow();
            assertThat(now.likelyFrom())
                    .as(tie)
                    .isAfter(before.of(TieId.of(tie)).orElseThrow().likelyFrom());
            assertThat(now.likelyFrom()).as(tie).isAfterOrEqualTo(now.notBefore());
            assertThat(now.likelyTo()).as(tie).isAfterOrEqualTo(now.likelyFrom());
            assertThat(now.notBefore()).as(tie).isEqualTo(day.tie(tie).start().orElseThrow());
        }
        assertThat(after.pace().rubbers()).isEqualTo(12);
        assertThat(after.pace().factor()).isBetween(1.15, 1.27); // 25 minutes for 20, drawn a little to 1
        assertThat(after.pace().startDelay()).isBetween(15.0, 25.0); // 25, 30 and 40 minutes, two more counted as none
    }

    @Test
    void a_fast_morning_moves_nothing_before_its_published_time() {
        Days day = day();
        played(day, "A-B", "1", "09:00", 8);
        played(day, "C-D", "2", "09:00", 8);
        ExpectedTimes.of(day.event(), Days.moment("09:35")).ties().forEach((id, expected) -> {
            assertThat(expected.likelyFrom())
                    .as("%s", id)
                    .isAfterOrEqualTo(day.event().tie(id).orElseThrow().start().orElseThrow());
            assertThat(expected.notBefore()).isEqualTo(expected.published());
        });
    }

    @Test
    void what_runs_long_pushes_the_next_tie_on_its_court() {
        Days day = day();
        day.opened("A-B").at("10:10").fact(new PlayFact.CourtCalled(TieId.of("A-B"), Optional.empty(), "1"));
        day.at("10:30").card("A-B", "1", "11-9");
        Expected next = expected(day, "10:35", "A-C"); // three rubbers of about 20 minutes are left on court 1
        assertThat(next.likelyFrom()).isAfter("11:15");
        assertThat(next.isLate()).isTrue();
        assertThat(expected(day, "10:35", "A-C")).isEqualTo(next);
    }

    @Test
    void a_tie_that_was_called_or_has_no_time_is_not_among_them() {
        Days day = day();
        day.opened("A-B").at("09:00").fact(new PlayFact.CourtCalled(TieId.of("A-B"), Optional.of(RubberNo.of(1)), "1"));
        day.poolTie("B-C", "P", 3, "B", "C");
        ExpectedTimes times = ExpectedTimes.of(day.event(), Days.moment("09:01"));
        assertThat(times.of(TieId.of("A-B"))).isEmpty();
        assertThat(times.of(TieId.of("B-C"))).isEmpty();
        assertThat(times.ties()).hasSize(5);
    }
}
