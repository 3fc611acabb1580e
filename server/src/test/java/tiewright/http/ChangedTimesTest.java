package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Role;

/** A changed time is seen by everybody it concerns: old struck, new, why, and the desk ticks who was told. */
class ChangedTimesTest {
    private static final String OLD =
            "<s class=\"old\"><span class=\"hidden-words\">No longer: </span>10:00, court 1</s>";
    private final Days day = Days.oneTie();
    private final Served served = Served.of(day, Days.moment("09:00"));

    @AfterEach
    void stop() {
        served.close();
    }

    private void move() {
        Guest.Got got = served.as(Role.ORGANISER)
                .send(
                        "/organiser/times",
                        "/organiser/times",
                        Map.of("tie-A1-start", "10:40", "tie-A1-court", "2", "reason", "A bus is late"));
        assertThat(got.status()).as(got.text()).isEqualTo(200);
    }

    @Test
    void old_and_new_stand_on_the_pages_of_players_clubs_ties_and_notices() {
        move();
        for (String page : List.of("/player/N1", "/club/S", "/ties", "/tie/A1", "/")) {
            Guest.Got got = served.stranger().get(page);
            assertThat(got.body()).as(page).contains(OLD);
            assertThat(got.text()).as(page).contains("10:40").contains("notice 1: A bus is late");
        }
        assertThat(served.stranger().get("/notices").text())
                .contains("10:00, court 1", "10:40, court 2", "A bus is late", "Concerns Club N v Club S");
    }

    @Test
    void the_desk_ticks_who_was_told_and_strangers_do_not_see_it() {
        move();
        Guest desk = served.as(Role.DESK);
        assertThat(desk.get("/notices").text()).contains("Notice 1: tell 2 clubs");
        assertThat(desk.get("/desk/notice/1").text()).contains("0 of 2 clubs told", "Player N1", "Player S8");
        int version = served.ledger.event().reach().count();
        Guest.Got got = desk.send("/desk/notice/1", "/desk/notice/1", Map.of("club", "N", "told", "yes"));
        assertThat(got.text()).contains("1 of 2 clubs told");
        assertThat(served.ledger.event().order().told(1)).containsExactly(ClubId.of("N"));
        assertThat(served.ledger.event().reach().count())
                .as("nobody else may notice")
                .isEqualTo(version);
        assertThat(served.stranger().get("/notices").text()).doesNotContain("told");
        assertThat(served.captain("N").get("/desk/notice/1").status()).isEqualTo(403);
        assertThat(desk.get("/desk/notice/9").status()).isEqualTo(404);
        desk.send("/desk/notice/1", "/desk/notice/1", Map.of("club", "S", "told", "yes"));
        assertThat(desk.get("/notices").text()).doesNotContain("tell 2", "tell 1");
    }
}
