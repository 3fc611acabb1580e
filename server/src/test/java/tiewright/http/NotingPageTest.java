package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** A game is typed while its film runs: without scripts, by the text and its button. */
class NotingPageTest {
    private static final String PAGE = "/captain/film/note";
    private static final String FILM = "/captain/film";
    private static final String HEADER =
            "game,rally,server,ending,player,where,serve,return,third,third_to,signal,call,call_by,call_end,mark,film_time\n";

    private static Served served() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-0");
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    private static Map<String, String> form(String rallies) {
        return new HashMap<>(Map.of(
                "game",
                "G1",
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
                "side-out-11",
                "rallies",
                rallies));
    }

    private static Guest.Got send(Guest captain, String what, Map<String, String> form) {
        Map<String, String> fields = new HashMap<>(form);
        fields.put("do", what);
        return captain.send(PAGE, PAGE, fields);
    }

    private static String kept(Served served) {
        return served.captain("N").get(FILM + "/rallies.csv").body();
    }

    @Test
    void after_each_rally_it_says_who_serves_to_whom_at_which_score() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(send(captain, "read", form("")).text())
                    .contains(
                            "Next is 0-0-2: N1 serves as server 2, from the right, to S1. N1 stands right and N2 left");
            String text = send(captain, "read", form("j1\nk3 n\n0\nj3")).text();
            // two points of the first server, a replay, then the first side has no server left
            assertThat(text)
                    .contains(
                            "Next is 0-2-1",
                            "Rally 4 at 2-0-2",
                            "hit a winner",
                            "Rally 2 at 1-0-2",
                            "erred under pressure (net)");
            assertThat(kept(served)).as("reading keeps nothing").isEqualTo(HEADER);
        }
    }

    @Test
    void what_cannot_be_read_is_named_and_what_comes_before_still_counts() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            Guest.Got got = send(captain, "read", form("j1\nj\nj1"));
            assertThat(got.status()).isEqualTo(200);
            assertThat(got.text())
                    .contains("Rally 2: after \"j\" comes the number of a player, 1 to 4.", "Next is 1-0-2");
            Guest.Got refused = send(captain, "keep", form("j1\nj\nj1"));
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.text()).contains("Rally 2: after \"j\" comes the number of a player, 1 to 4.");
            assertThat(refused.body()).as("what was typed stays").contains("\nj1\nj\nj1</textarea>");
            assertThat(kept(served)).isEqualTo(HEADER);
        }
    }

    @Test
    void a_game_is_kept_and_counts_as_one_that_was_given_in_files_and_can_be_gone_on_with() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            Guest.Got got = send(captain, "keep", form("@0:18 , a q e2 j1 n\n?"));
            assertThat(got.path()).isEqualTo(FILM);
            assertThat(got.text()).contains("Kept: 1 game with 1 decided rally", "Go on noting game G1");
            assertThat(kept(served))
                    .isEqualTo(
                            HEADER + "G1,1,,earned,N1,net,deep,deep,soft,N2,stay,,,,,0:18\nG1,2,,unsure,,,,,,,,,,,,\n");
            assertThat(captain.get(FILM + "/games.csv").body()).endsWith("G1,,,side-out-11,N1,N1,N2,S1,S2,,\n");
            assertThat(captain.get(PAGE + "?game=G1").body())
                    .contains("@0:18 , a q e2 j1 n\n?\n</textarea>", "name=\"was\" value=\"G1\"");
            Map<String, String> more = form("@0:18 , a q e2 j1 n\n?\nj1");
            more.put("was", "G1");
            assertThat(send(captain, "keep", more).text()).contains("Kept: 1 game with 2 decided rallies");
        }
    }

    @Test
    void another_game_does_not_take_the_place_of_a_kept_one_by_mistake() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            send(captain, "keep", form("j1"));
            Guest.Got got = send(captain, "keep", form("l2"));
            assertThat(got.status()).isEqualTo(422);
            assertThat(got.text())
                    .contains("A game \"G1\" is kept already. Give this one another name, or go on with that one.");
            assertThat(kept(served)).contains("earned");
        }
    }

    @Test
    void a_rubber_of_today_is_filled_in_and_held_against_its_card() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(captain.get(PAGE).body()).contains("href=\"" + PAGE + "?tie=A1&amp;rubber=1\"");
            String page = captain.get(PAGE + "?tie=A1&rubber=1").body();
            assertThat(page)
                    .contains(
                            "value=\"A1-1\"",
                            "<option value=\"N1\" selected>",
                            "<option value=\"S2\" selected>",
                            "value=\"11\"");
            // the away captain has the own pair first, and the card turned round
            String other = served.captain("S").get(PAGE + "?tie=A1&rubber=1").body();
            assertThat(other.substring(other.indexOf("id=\"right_1\""), other.indexOf("id=\"left_1\"")))
                    .contains("<option value=\"S1\" selected>");
            assertThat(other.substring(other.indexOf("id=\"card_1\""))).contains("value=\"0\"");
            // one rally's winner flipped: the side that has nothing on the card gets the serve, and then a point
            Map<String, String> flipped = form("j1\n".repeat(9) + "j3\nj3\n");
            flipped.putAll(Map.of("tie", "A1", "rubber", "1", "card_1", "11", "card_2", "0"));
            assertThat(send(captain, "read", flipped).text()).contains("Game G1: rally 11 is the first that cannot be");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "game, , This must be filled in.",
        "right_1, , This must be filled in.",
        "left_1, N1, That cannot stand: N1 is on the court twice.",
        "left_2, X9, That cannot stand: there is no player X9 in this event.",
        "format, side-in-11, That cannot stand: \"side-in-11\" is not a scoring format such as side-out-11.",
        "tie, B7, That cannot stand: there is no tie B7 in this event.",
        "card_1, many, That cannot stand: \"many\" is not a whole number from 0 to 999.",
        "first_server, 7, That cannot stand: 7 does not play this game."
    })
    void what_is_wrong_with_the_game_stands_beside_its_field(String field, String value, String words) {
        try (Served served = served()) {
            Map<String, String> form = form("j1");
            form.put(field, value == null ? "" : value);
            Guest.Got got = send(served.captain("N"), "keep", form);
            assertThat(got.status()).isEqualTo(422);
            assertThat(got.text()).contains(words);
            assertThat(got.body()).contains("href=\"#" + field + "\"").contains("\nj1</textarea>");
            assertThat(kept(served)).isEqualTo(HEADER);
        }
    }

    @Test
    void notes_with_words_that_have_no_key_are_not_lost_by_going_on_here() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            captain.send(
                    FILM,
                    FILM,
                    Map.of(
                            "games.csv",
                            "game,tie,rubber,format,first_server,right_1,left_1,right_2,left_2,card_1,card_2\nG1,,,side-out-11,N1,N1,N2,S1,S2,,",
                            "rallies.csv",
                            HEADER + "G1,1,,gave,N1,body,,,,,,,,,,"));
            assertThat(captain.get(FILM).text())
                    .contains("Its notes hold words that have no key here")
                    .doesNotContain("Go on noting");
            Guest.Got got = captain.get(PAGE + "?game=G1");
            assertThat(got.status()).isEqualTo(404);
            assertThat(got.text()).contains("Change them in their files");
            assertThat(captain.get(PAGE + "?game=G2").status()).isEqualTo(404);
        }
    }

    @Test
    void no_other_role_and_no_other_club_reads_it() {
        try (Served served = served()) {
            send(served.captain("N"), "keep", form("j1"));
            assertThat(served.captain("S").get(PAGE + "?game=G1").status()).isEqualTo(404);
            for (Role role : List.of(Role.DESK, Role.ORGANISER, Role.REFEREE, Role.VOLUNTEER)) {
                assertThat(served.as(role).get(PAGE).status()).as(role.code()).isEqualTo(403);
            }
            assertThat(served.ledger.filmsOf(ClubId.of("S"))).isEmpty();
        }
    }
}
