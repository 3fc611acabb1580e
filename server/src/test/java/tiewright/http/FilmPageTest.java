package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.http.visit.Parts;

/** A captain gives film notes to the service; they count for the own club, and nobody else notices. */
class FilmPageTest {
    private static final String PAGE = "/captain/film";
    private static final String RATINGS = "/captain/squad";
    private static final String GAMES =
            "game,tie,rubber,format,first_server,right_1,left_1,right_2,left_2,card_1,card_2";
    private static final String RALLIES =
            "game,rally,server,ending,player,where,serve,return,third,third_to,signal,call,call_by,call_end,mark,film_time";
    private static final String GAME = "G1,A1,1,side-out-11,N1,N1,N2,S1,S2,11,0";

    private static Served served() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-0");
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    /** So many rallies of a game, each won by N1 with a winner. */
    private static String won(String game, int rallies) {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= rallies; i++) {
            text.append(game).append(',').append(i).append(",,earned,N1,,,,,,,,,,,\n");
        }
        return text.toString();
    }

    private static Guest.Got paste(Guest guest, String games, String rallies) {
        return guest.sendInParts(PAGE, PAGE, Map.of("games.csv", games, "rallies.csv", rallies), Map.of());
    }

    private static Guest.Got choose(Guest guest, String games, String rallies) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("games.csv-file", games.getBytes(StandardCharsets.UTF_8));
        files.put("rallies.csv-file", rallies.getBytes(StandardCharsets.UTF_8));
        return guest.sendInParts(PAGE, PAGE, Map.of("games.csv", "", "rallies.csv", ""), files);
    }

    private static int kept(Served served, String club) {
        return served.ledger.filmsOf(ClubId.of(club)).size();
    }

    @Test
    void the_page_asks_for_consent_first_and_judges_nobody() {
        try (Served served = served()) {
            assertThat(served.captain("N").get(PAGE).text())
                    .contains(
                            "Tell opponents before the game that they are filmed",
                            "minors",
                            "consent",
                            "Local rules",
                            "Small samples: they describe past film and do not judge a person.",
                            "At most 2 MB together",
                            "No film notes are kept yet.");
        }
    }

    @Test
    void files_and_pasted_text_are_taken_alike_and_given_back_as_files() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            for (boolean pasted : List.of(false, true)) {
                String games = "\uFEFF" + GAMES.replace(",", " ,") + "\r\n" + GAME + "\r\n";
                String rallies = RALLIES + "\r\n" + won("G1", 11).replace("\n", "\r\n");
                Guest.Got got = pasted ? paste(captain, games.substring(1), rallies) : choose(captain, games, rallies);
                assertThat(got.path()).isEqualTo(PAGE);
                assertThat(got.text())
                        .contains(
                                "Kept: 1 game with 11 decided rallies on film",
                                "Game G1, tie A1, rubber 1",
                                "they lead to 11-0");
                assertThat(captain.get(PAGE + "/games.csv").body()).isEqualTo(GAMES + "\n" + GAME + "\n");
                assertThat(captain.get(PAGE + "/rallies.csv").body()).isEqualTo(RALLIES + "\n" + won("G1", 11));
                captain.send(PAGE, PAGE + "/delete", Map.of());
                assertThat(kept(served, "N")).isZero();
            }
        }
    }

    @Test
    void what_was_pasted_in_a_form_that_is_not_in_parts_is_taken_too() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            captain.send(
                    PAGE, PAGE, Map.of("games.csv", GAMES + "\n" + GAME, "rallies.csv", RALLIES + "\n" + won("G1", 3)));
            assertThat(captain.get(PAGE).text())
                    .contains("Kept: 1 game with 3 decided rallies", "A rally is missing, noted wrong or not on film");
        }
    }

    @Test
    void form_and_chemistry_and_the_proposal_rest_on_it() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String before = captain.get(RATINGS).text();
            assertThat(before).contains("with 0 rallies on film");
            String advice = advice(captain);
            String games = GAMES + "\nG1,,,side-out-99,N1,N1,N2,S1,S2,,";
            paste(captain, games, RALLIES + "\n" + won("G1", 60));
            assertThat(captain.get(RATINGS).text())
                    .isNotEqualTo(before)
                    .contains("All of it rests on 2 games, with 60 rallies on film", "a first look");
            assertThat(advice(captain)).isNotEqualTo(advice);
            captain.post(PAGE + "/delete", Map.of("all", "yes"));
            assertThat(advice(captain)).isEqualTo(advice);
        }
    }

    /** Who could play the decider of an opened tie; the same notes always give the same advice. */
    private static String advice(Guest captain) {
        return captain.get("/captain/proposal/A1").text();
    }

    @Test
    void every_fault_is_told_with_file_line_and_column_and_nothing_is_kept() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String games = GAMES + "\n" + GAME.replace("N2", "X9") + "\nG2,B7,1,side-in-11,N1,N1,N2,S1,S2,,";
            String rallies =
                    RALLIES + "\nG1,1,,earned,N1,,,,,,,,,,,\nG1,1,,won,N1,,,,,,,,,,,\nG3,one,,gave,,,,,,,,,,,,";
            for (Guest.Got got : List.of(choose(captain, games, rallies), paste(captain, games, rallies))) {
                assertThat(got.status()).isEqualTo(422);
                assertThat(got.text())
                        .contains(
                                "Nothing was kept: what is wrong with games.csv stands beside its field",
                                "games.csv:2: left_1: there is no player X9 in this event",
                                "games.csv:3: tie: there is no tie B7 in this event",
                                "games.csv:3: format: \"side-in-11\" is not a scoring format such as side-out-11",
                                "rallies.csv:3: rally: rally 1 of game G1 is listed here twice",
                                "rallies.csv:3: ending: \"won\" is not one of earned, forced, gave, replay, unsure",
                                "rallies.csv:4: game: there is no game G3 in games.csv",
                                "rallies.csv:4: rally: \"one\" is not a whole number from 1 to 9999",
                                "rallies.csv:4: player: this value is missing");
                assertThat(got.body()).as("what was given stays").contains("G2,B7,1,side-in-11", "G3,one,,gave");
            }
            assertThat(kept(served, "N")).isZero();
        }
    }

    @Test
    void a_file_that_is_missing_no_text_or_no_table_is_said_to_be() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(paste(captain, GAMES + "\n" + GAME, "").text()).contains("rallies.csv:1: the file is missing");
            assertThat(paste(captain, "nonsense", RALLIES).text()).contains("games.csv:1: nonsense: unknown column");
            Guest.Got bytes = captain.sendInParts(
                    PAGE, PAGE, Map.of("rallies.csv", RALLIES), Map.of("games.csv-file", new byte[] {(byte) 0xff, 0}));
            assertThat(bytes.status()).isEqualTo(422);
            assertThat(bytes.text())
                    .contains("games.csv:1: this is not UTF-8 text")
                    .doesNotContain("games.csv:1: the file is missing");
            assertThat(paste(captain, "<script>alert(1)</script>,\"", RALLIES).body())
                    .doesNotContain("<script>alert");
            assertThat(kept(served, "N")).isZero();
        }
    }

    @Test
    void more_than_the_limit_is_refused_in_words() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            for (int bytes : List.of(Parts.MOST_BYTES + 1, 3 * Parts.MOST_BYTES, Parts.MOST_BYTES + 1)) {
                Guest.Got got = choose(captain, "x".repeat(bytes), RALLIES);
                assertThat(got.status()).isEqualTo(413);
                assertThat(got.text()).contains("more than the service takes");
            }
            String most = "x".repeat(Parts.MOST_BYTES - 10_000);
            assertThat(choose(captain, most, RALLIES).status())
                    .as("read, and found wanting")
                    .isEqualTo(422);
        }
    }

    @Test
    void who_sends_all_of_it_before_listening_hears_why_it_is_refused() throws IOException {
        try (Served served = served()) {
            String link = served.link(Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.empty(), "captain");
            HttpURLConnection entering =
                    (HttpURLConnection) URI.create(link).toURL().openConnection();
            entering.setInstanceFollowRedirects(false);
            String cookie = entering.getHeaderField("Set-Cookie").split(";")[0];
            String head = "--x\r\nContent-Disposition: form-data; name=\"games.csv-file\"; filename=\"g.csv\"\r\n\r\n";
            URI at = URI.create(served.service.url());
            try (Socket socket = new Socket(at.getHost(), at.getPort());
                    OutputStream out = socket.getOutputStream()) {
                out.write(("POST " + PAGE + " HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nCookie: " + cookie
                                + "\r\nContent-Type: multipart/form-data; boundary=x\r\nContent-Length: "
                                + (head.length() + 400 * 65_536) + "\r\n\r\n" + head)
                        .getBytes(StandardCharsets.US_ASCII));
                byte[] piece = "x".repeat(65_536).getBytes(StandardCharsets.US_ASCII);
                for (int i = 0; i < 400; i++) {
                    out.write(piece);
                }
                assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII))
                        .isEqualTo("HTTP/1.1 413");
            }
        }
    }

    @Test
    void a_game_given_again_replaces_the_earlier_one_and_the_others_stay() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            paste(
                    captain,
                    GAMES + "\n" + GAME + "\n" + GAME.replace("G1", "G2"),
                    RALLIES + "\n" + won("G1", 11) + won("G2", 4));
            paste(captain, GAMES + "\n" + GAME, RALLIES + "\n" + won("G1", 5));
            assertThat(captain.get(PAGE).text()).contains("Kept: 2 games with 9 decided rallies");
            assertThat(captain.get(PAGE + "/rallies.csv").body())
                    .isEqualTo(RALLIES + "\n" + won("G1", 5) + won("G2", 4));
        }
    }

    @Test
    void a_captain_deletes_one_game_or_all_of_them_after_ticking_so() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String before = captain.get(RATINGS).text();
            paste(
                    captain,
                    GAMES + "\n" + GAME + "\n" + GAME.replace("G1", "G 2") + "\n" + GAME.replace("G1", "G3"),
                    RALLIES + "\n" + won("G1", 11) + won("G 2", 4) + won("G3", 2));
            captain.post(PAGE + "/delete", Map.of("game", "G 2"));
            assertThat(captain.get(PAGE).text()).contains("Game G1", "Game G3").doesNotContain("Game G 2");
            assertThat(captain.post(PAGE + "/delete", Map.of()).status()).isEqualTo(422);
            assertThat(kept(served, "N")).isEqualTo(2);
            captain.post(PAGE + "/delete", Map.of("all", "yes"));
            assertThat(kept(served, "N")).isZero();
            assertThat(captain.get(RATINGS).text()).isEqualTo(before);
        }
    }

    @Test
    void at_most_so_many_games_are_kept() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            StringBuilder games = new StringBuilder(GAMES);
            for (int i = 1; i <= 200; i++) {
                games.append("\n").append(GAME.replace("G1", "H" + i));
            }
            assertThat(paste(captain, games.toString(), RALLIES).text()).contains("Kept: 200 games");
            Guest.Got more = paste(captain, GAMES + "\n" + GAME, RALLIES);
            assertThat(more.status()).isEqualTo(422);
            assertThat(more.text()).contains("At most 200 filmed games of a club are kept");
            assertThat(paste(captain, GAMES + "\n" + GAME.replace("G1", "H7"), RALLIES)
                            .status())
                    .as("in its place")
                    .isEqualTo(200);
        }
    }

    @Test
    void no_page_of_anybody_else_changes_by_a_byte() {
        try (Served served = served()) {
            List<Guest> others = List.of(
                    served.stranger(),
                    served.captain("S"),
                    served.player("N", "N1"),
                    served.as(Role.ORGANISER),
                    served.as(Role.REFEREE),
                    served.as(Role.DESK));
            List<String> pages = List.of(
                    "/",
                    "/ties",
                    "/tie/A1",
                    "/club/N",
                    "/player/N1",
                    "/notices",
                    "/log",
                    "/organiser",
                    "/desk",
                    RATINGS,
                    PAGE,
                    PAGE + "/games.csv",
                    PAGE + "/rallies.csv",
                    "/captain",
                    "/captain/squad",
                    "/captain/proposal/A1");
            Guest captain = served.captain("N");
            List<String> before = seen(others, pages);
            List<String> calm = seen(others, pages);
            assertThat(calm).as("nothing changes by itself").isEqualTo(before);
            paste(captain, GAMES + "\n" + GAME, RALLIES + "\n" + won("G1", 11));
            assertThat(kept(served, "N")).isEqualTo(1);
            assertThat(kept(served, "S")).isZero();
            assertThat(seen(others, pages)).isEqualTo(before);
            for (Guest other : others) {
                boolean rival = other == others.get(1);
                assertThat(other.get(PAGE).status()).isEqualTo(rival ? 200 : 403);
                assertThat(other.get(PAGE + "/rallies.csv").body()).doesNotContain("G1,");
                other.post(PAGE + "/delete", Map.of("game", "G1"));
                other.post(PAGE + "/delete", Map.of("all", "yes"));
            }
            assertThat(kept(served, "N")).isEqualTo(1);
        }
    }

    /** The pages as they came, but for the keys of forms, which are new each time. */
    private static List<String> seen(List<Guest> guests, List<String> pages) {
        return guests.stream()
                .flatMap(guest -> pages.stream().map(guest::get))
                .map(got -> got.status() + got.body().replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", ""))
                .toList();
    }

    @Test
    void a_form_in_parts_from_another_site_or_to_another_address_is_refused() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String body = "--x\r\nContent-Disposition: form-data; name=\"game\"\r\n\r\nG1\r\n--x--\r\n";
            String parts = "multipart/form-data; boundary=x";
            assertThat(captain.raw(PAGE, body, Map.of("Content-Type", parts, "Origin", "http://elsewhere.example"))
                            .status())
                    .isEqualTo(403);
            assertThat(captain.raw(PAGE + "/delete", body, Map.of("Content-Type", parts))
                            .status())
                    .isEqualTo(403);
            for (String type : List.of(parts, "multipart/form-data")) {
                for (String sent : List.of("garbage", "", "--x--", body.substring(0, 30), body.replace("--x--", ""))) {
                    Guest.Got unread = captain.raw(PAGE, sent, Map.of("Content-Type", type));
                    assertThat(unread.status()).as("%s: %s", type, sent).isIn(400, 422);
                    assertThat(unread.text()).doesNotContain("more than the service takes");
                }
            }
        }
    }
}
