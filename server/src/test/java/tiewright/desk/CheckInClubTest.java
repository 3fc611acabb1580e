package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Player;
import tiewright.event.PlayerId;

/** A whole club checks in with one press; whoever was asked about before keeps the answer. Common practice, no source. */
class CheckInClubTest {
    private final Days day = Days.oneTie().by(Days.desk());

    private long here(String club) {
        return day.event().squad(ClubId.of(club)).stream()
                .filter(player -> player.checkedInAt().isPresent())
                .count();
    }

    @Test
    void everybody_of_the_club_is_here_and_nobody_of_another() {
        int squad = day.event().squad(ClubId.of("N")).size();
        day.does(new CheckInClub(ClubId.of("N")));
        assertThat(here("N")).isEqualTo(squad).isPositive();
        assertThat(here("S")).isZero();
    }

    @Test
    void who_was_noted_as_not_here_stays_so_and_who_was_here_keeps_the_time() {
        day.at("09:10").does(new CheckIn(PlayerId.of("N1"), true)).does(new CheckIn(PlayerId.of("N2"), false));
        day.at("09:20").does(new CheckInClub(ClubId.of("N")));
        Player first = day.event().players().get(PlayerId.of("N1"));
        assertThat(first.checkedInAt()).contains(Days.moment("09:10"));
        assertThat(day.event().players().get(PlayerId.of("N2")).absent()).isTrue();
        assertThat(here("N")).isEqualTo(day.event().squad(ClubId.of("N")).size() - 1);
    }

    @Test
    void says_why_not() {
        assertThat(Why.not(day.by(Days.volunteer("V")), new CheckInClub(ClubId.of("N"))))
                .containsExactly("desk.officials-only");
        assertThat(Why.not(day.by(Days.desk()), new CheckInClub(ClubId.of("X"))))
                .containsExactly("desk.no-such-club");
        day.does(new CheckInClub(ClubId.of("N")));
        assertThat(Why.not(day, new CheckInClub(ClubId.of("N")))).containsExactly("desk.nobody-left-to-check-in");
    }
}
