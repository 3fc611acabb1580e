package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.OrderOfPlay;

/** All play stands still until a time of the day. */
class StopHallTest {
    private static final LocalTime UNTIL = LocalTime.of(10, 10);

    private final Days day = Days.oneTie().at("09:50").by(Days.organiser());

    private boolean stands(String at) {
        return day.event().order().stop(day.event().about(), Days.moment(at)).isPresent();
    }

    @Test
    void it_holds_until_its_time_and_no_longer() {
        assertThat(stands("09:50")).isFalse();
        day.does(new StopHall(UNTIL, " Rain "));
        assertThat(day.event().order().stop()).contains(new OrderOfPlay.Stop(UNTIL, "Rain"));
        assertThat(stands("10:09")).isTrue();
        assertThat(stands("10:10")).isFalse();
    }

    @Test
    void it_ends_when_an_official_says_so_and_a_later_one_takes_its_place() {
        day.does(new StopHall(UNTIL, "Rain"))
                .does(new StopHall(LocalTime.of(10, 30), "More rain"))
                .at("10:20");
        assertThat(stands("10:20")).isTrue();
        day.by(Days.desk()).does(new HallGoesOn());
        assertThat(stands("10:20")).isFalse();
        assertThat(day.codes(new HallGoesOn())).containsExactly("desk.hall-is-not-stopped");
    }

    @Test
    void what_is_over_cannot_be_stopped_and_only_officials_stop_or_go_on() {
        assertThat(day.at("10:10").codes(new StopHall(UNTIL, "")))
                .containsExactly("desk.stop-is-over", "desk.text-missing.reason");
        day.at("10:00").does(new StopHall(UNTIL, "Rain")).by(Days.captain("N"));
        assertThat(day.codes(new StopHall(UNTIL, "Rain"))).containsExactly("desk.officials-only");
        assertThat(day.codes(new HallGoesOn())).containsExactly("desk.officials-only");
    }
}
