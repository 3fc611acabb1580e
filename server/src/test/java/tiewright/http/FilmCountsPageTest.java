package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** What the film of a club comes to, where on film it is, and whom to mix at practice. */
class FilmCountsPageTest {
    private static final String FILM = "/captain/film";
    private static final List<String> PAGES = List.of(
            FILM + "/counts",
            FILM + "/find?player=N2&ending=gave",
            FILM + "/agreement?one=G1&other=G1",
            "/captain/rota");

    private static Served served() {
        Days day = Days.oneTie().opened("A1");
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    private static void note(Guest captain, String game, String rallies) {
        captain.send(
                FILM + "/note",
                FILM + "/note",
                Map.of(
                        "do",
                        "keep",
                        "game",
                        game,
                        "right_1",
                        "N1",
                        "left_1",
                        "N2",
                        "right_2",
                        "S1",
                        "left_2",
                        "S2",
                        "first_server",
                        "1",
                        "format",
                        "rally-99",
                        "rallies",
                        rallies));
    }

    private static String lines(int count, String line) {
        return IntStream.range(0, count).mapToObj(any -> line).collect(Collectors.joining("\n", "", "\n"));
    }

    @Test
    void counts_come_with_their_range_and_what_they_rest_on() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(captain.get(FILM + "/counts").text())
                    .contains("Counts appear here once a game of your own players is noted from film.");
            note(captain, "G1", lines(30, "l2 n") + lines(10, "j1"));
            assertThat(captain.get(FILM + "/counts").text())
                    .contains(
                            "N2: 1 game",
                            "Gave 30 of 40 not enough film",
                            "Not enough film: 40 so far. From 50 a share is said, from 150 it is worth acting on.");
            note(captain, "G2", lines(20, "j1"));
            String text = captain.get(FILM + "/counts").text();
            assertThat(text)
                    .contains(
                            "N1 and N2: 2 games",
                            "Gave 30 of 60 50 (38 to 62)",
                            "depends on the level of play",
                            "A first look, from 60",
                            "Against S1 and S2 (2 games).",
                            "One in twenty misses by luck alone");
            assertThat(text)
                    .as("nobody of the other club")
                    .doesNotContain("S1: 2 games", "S1 and S2: ", "Serves missed");
            assertThat(captain.get(FILM + "/counts").body())
                    .contains("href=\"" + FILM + "/find?player=N2&amp;ending=gave\"");
        }
    }

    @Test
    void rallies_are_found_with_their_time_on_the_film() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            note(captain, "G1", "@0:18 e3 l2 n\n@0:40 r3 l2 o\nj1\n@1:02 e4 l1");
            assertThat(captain.get(FILM + "/find").text()).doesNotContain("Found");
            String text = captain.get(FILM + "/find?player=N2&ending=gave&noted=third-soft")
                    .text();
            assertThat(text)
                    .contains("1 rally.", "G1 0:18 Rally 1 at 0-0, N1 serving: N2 missed a ball usually made (net).")
                    .doesNotContain("0:40", "1:02 Rally");
            assertThat(captain.get(FILM + "/find?ending=earned").text()).contains("G1 not noted Rally 3");
            assertThat(captain.get(FILM + "/find?noted=crossed").text()).contains("0 rallies.");
            assertThat(captain.get(FILM + "/find?player=nobody&ending=what&noted=else")
                            .status())
                    .isEqualTo(200);
        }
    }

    @Test
    void two_who_noted_the_same_game_are_compared() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            note(captain, "G1", "j1 n\nk3\nl2\nj1");
            note(captain, "G2", "j1\nk3\nl2\nk1");
            String page = FILM + "/agreement";
            assertThat(captain.get(page).text()).doesNotContain("Kappa");
            // who won: the same 3 of 4; by luck 3/4 x 2/4 for one side and 1/4 x 2/4 for the other, so (0.75 - 0.5) /
            // 0.5
            assertThat(captain.get(page + "?one=G1&other=G2").text())
                    .contains(
                            "The first 4 rallies of both",
                            "Who won the rally 3 of 4 0.50 Too unlike",
                            "Who ended it 4 of 4 1.00 Enough to count on.",
                            "Where the last ball went 0 of 0 none Cannot be said",
                            "Noted by one of them alone: 1.",
                            "delete one of them");
            assertThat(captain.get(page + "?one=G1&other=G1").text()).contains("Choose two different games");
            assertThat(captain.get(page + "?one=G1&other=G9").status()).isEqualTo(200);
        }
    }

    @Test
    void a_rota_is_made_for_those_who_come() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String all = captain.get("/captain/rota").text();
            assertThat(all).contains("Each of the 28 pairs plays once; any two players are opponents twice.", "7, 2");
            String six = captain.get("/captain/rota?who=N1&who=N2&who=N3&who=N4&who=N5&who=N6")
                    .text();
            assertThat(six).contains("6 players cannot all be mixed evenly");
            Guest.Got three = captain.get("/captain/rota?who=N1&who=N2&who=N3");
            assertThat(three.status()).isEqualTo(422);
            assertThat(three.text()).contains("A rota takes 4 to 17 players, and these are 3.");
        }
    }

    @Test
    void no_other_role_and_no_other_club_sees_them() {
        try (Served served = served()) {
            note(served.captain("N"), "G1", lines(60, "l2"));
            assertThat(served.captain("S").get(FILM + "/counts").text()).contains("Counts appear here once");
            assertThat(served.captain("S").get(PAGES.get(1)).text()).contains("0 rallies.");
            for (Role role : List.of(Role.DESK, Role.ORGANISER, Role.REFEREE, Role.VOLUNTEER)) {
                PAGES.forEach(page -> assertThat(served.as(role).get(page).status())
                        .as(role.code() + page)
                        .isEqualTo(403));
            }
        }
    }
}
