package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.OrderOfPlay;
import tiewright.event.TieId;

/** Every change of a published time belongs to its notice, with the clubs that must be told and those that were. */
class TickToldTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");

    private static Days moved() {
        return Days.oneTie()
                .at("09:10")
                .does(new RetimeTie(TieId.of("A1"), Optional.of(LocalTime.of(10, 40)), Optional.of("2"), "rain"));
    }

    @Test
    void a_moved_tie_leaves_its_old_time_its_notice_and_its_clubs() {
        OrderOfPlay order = moved().event().order();
        OrderOfPlay.Change change = order.under(1).get(0);
        assertThat(order.under(1)).hasSize(1);
        assertThat(change.before().start()).contains(LocalTime.of(10, 0));
        assertThat(change.after().start()).contains(LocalTime.of(10, 40));
        assertThat(order.concerned(1)).containsExactly(N, S);
        assertThat(order.of(TieId.of("A1"))).hasSize(2);
        assertThat(order.of(TieId.of("A1")).get(0).notice()).isEmpty();
    }

    @Test
    void a_tick_is_kept_and_can_be_taken_back() {
        Days day = moved().does(new TickTold(1, N, true));
        assertThat(day.event().order().told(1)).containsExactly(N);
        assertThat(day.codes(new TickTold(1, N, true))).containsExactly("desk.told-already");
        assertThat(day.does(new TickTold(1, N, false)).event().order().told(1)).isEmpty();
        assertThat(day.codes(new TickTold(1, N, false))).containsExactly("desk.not-told");
    }

    @Test
    void refuses_a_club_that_no_time_of_the_notice_concerns_and_others_than_officials() {
        Days day = moved().clubs("W");
        assertThat(day.codes(new TickTold(1, ClubId.of("W"), true))).containsExactly("desk.notice-does-not-concern");
        assertThat(day.codes(new TickTold(9, N, true))).containsExactly("desk.notice-does-not-concern");
        assertThat(day.by(Days.captain("N")).codes(new TickTold(1, N, true))).containsExactly("desk.officials-only");
    }
}
