package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Who calls before a published time reads it on the button: players were told that nothing happens before it. */
class CalledEarlyTest {
    private static String desk(Days day, String at) {
        try (Served served = Served.of(day, Days.moment(at))) {
            return served.as(Role.DESK).get("/desk").text();
        }
    }

    @Test
    void a_tie_before_its_time() {
        Days opened = Days.oneTie().opened("A1");
        assertThat(desk(opened, "09:50")).contains("Call rubber 1 early: published not before 10:00");
        assertThat(desk(opened, "10:00")).contains("Call rubber 1").doesNotContain("early");
    }

    @Test
    void a_club_that_waits_for_a_decider_elsewhere_is_named_beside_the_call() {
        Days two = Days.oneTie()
                .clubs("E")
                .poolTie("A2", "A", 2, "N", "E")
                .timed("A2", "10:30", "2")
                .opened("A1")
                .cards("A1", "11-5", "11-5", "5-11", "5-11")
                .opened("A2");
        assertThat(desk(two, "10:30")).contains("First look: Club N v Club S still waits for its decider.");
        assertThat(desk(Days.oneTie().opened("A1"), "10:00")).doesNotContain("First look");
    }

    @Test
    void a_rubber_that_was_put_off_but_not_one_that_is_a_little_ahead() {
        Days rain = Days.oneTie()
                .opened("A1")
                .at("10:20")
                .card("A1", "1", "11-4")
                .fact(new DrawFact.RubberTimed(
                        TieId.of("A1"), RubberNo.of(2), LocalTime.of(11, 0), "1", Optional.empty()));
        assertThat(desk(rain, "10:30")).contains("Call rubber 2 early: published not before 11:00");
        assertThat(desk(rain, "10:51")).contains("Call rubber 2").doesNotContain("early");
    }
}
