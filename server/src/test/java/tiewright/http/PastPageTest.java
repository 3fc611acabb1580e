package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.plainfiles.PastNotes;
import tiewright.rating.GivePastGames;

/** A captain gives earlier games that only the own club knows; they count for it, once, and nobody else notices. */
class PastPageTest {
    private static final String PAGE = "/captain/past";
    private static final String BACK = PAGE + "/take-back";
    private static final String RATINGS = "/captain/squad";
    private static final String FILE = "past-results.csv";
    private static final String HEAD = "date,home_1,home_2,away_1,away_2,home,away,format\n";
    private static final String WON = "2026-05-02,N1,N2,S1,S2,11,2,side-out-11\n";
    private static final String STRANGERS = "2026-05-09,N1,N3,Somebody,Somebody else,11,9,side-out-11\n";

    private static Served served() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-0");
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    private static Guest.Got paste(Guest guest, String rows) {
        return guest.sendInParts(PAGE, PAGE, Map.of(FILE, rows), Map.of());
    }

    private static int kept(Served served, String club) {
        return served.ledger.pastGamesOf(ClubId.of(club)).size();
    }

    @Test
    void a_file_and_pasted_text_are_taken_alike_and_given_back_as_a_file() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(captain.get(PAGE).text())
                    .contains(
                            "does not judge a person",
                            "For your club alone",
                            "None of your own earlier games are here yet.");
            String rows = "\uFEFF" + HEAD + WON + STRANGERS;
            for (boolean pasted : List.of(false, true)) {
                Guest.Got got = pasted
                        ? paste(captain, rows.substring(1))
                        : captain.sendInParts(
                                PAGE,
                                PAGE,
                                Map.of(FILE, ""),
                                Map.of(FILE + "-file", rows.getBytes(StandardCharsets.UTF_8)));
                assertThat(got.path()).isEqualTo(PAGE);
                assertThat(got.text()).contains("2 games kept", "2026-05-02", "11-2", "Somebody else");
                assertThat(captain.get(PAGE + "/" + FILE).body()).isEqualTo(HEAD + WON + STRANGERS);
                captain.post(BACK, Map.of("all", "yes"));
                assertThat(kept(served, "N")).isZero();
            }
        }
    }

    @Test
    void rubbers_that_a_file_names_are_kept_and_given_back() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String rows = HEAD.trim() + ",match,best_of\n" + WON.trim() + ",final,3\n" + STRANGERS.trim() + ",,\n";
            paste(captain, rows);
            assertThat(captain.get(PAGE + "/" + FILE).body()).isEqualTo(rows);
        }
    }

    @Test
    void ratings_and_advice_of_that_club_rest_on_them_and_on_nothing_when_they_are_taken_back() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            Guest rival = served.captain("S");
            String ratings = captain.get(RATINGS).text();
            String advice = captain.get("/captain/proposal/A1").text();
            String rivals = rival.get(RATINGS).text()
                    + rival.get("/captain/proposal/A1").text();
            paste(captain, HEAD + WON + STRANGERS);
            assertThat(captain.get(RATINGS).text()).isNotEqualTo(ratings);
            assertThat(captain.get("/captain/proposal/A1").text())
                    .isNotEqualTo(advice)
                    .contains("2 earlier games");
            assertThat(rival.get(RATINGS).text()
                            + rival.get("/captain/proposal/A1").text())
                    .isEqualTo(rivals);
            captain.post(BACK, Map.of("game", "1"));
            assertThat(captain.get(PAGE).text()).contains("one game kept").doesNotContain("2026-05-02");
            captain.post(BACK, Map.of("every", "yes", "all", "yes"));
            assertThat(captain.get(RATINGS).text()).isEqualTo(ratings);
        }
    }

    @Test
    void a_game_that_everybody_knows_or_that_is_on_a_card_of_today_is_recognised_and_counts_once() {
        try (Served served = served()) {
            List<PrivateNote> common = PastNotes.read(HEAD + WON).games().stream()
                    .map(game -> (PrivateNote) game)
                    .toList();
            served.given(List.of(), common);
            Guest captain = served.captain("N");
            String advice = captain.get("/captain/proposal/A1").text();
            String turned = "2026-05-02,S2,S1,N2,N1,2,11,side-out-11\n";
            String carded = Days.DATE + ",N1,N2,S1,S2,11,0,side-out-11\n";
            paste(captain, HEAD + turned + carded);
            assertThat(captain.get(PAGE).text())
                    .contains(
                            "2 games kept",
                            "2 of these are known to everybody already and count once",
                            "on the list for everybody or on a card of today");
            assertThat(captain.get("/captain/proposal/A1").text())
                    .as("nothing counts twice")
                    .isEqualTo(advice);
        }
    }

    @Test
    void a_longer_list_given_again_adds_only_what_is_new() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            paste(captain, HEAD + WON);
            paste(captain, HEAD + WON + STRANGERS);
            assertThat(kept(served, "N")).isEqualTo(2);
            paste(captain, HEAD + WON + WON);
            assertThat(kept(served, "N"))
                    .as("the same four can play to the same score twice")
                    .isEqualTo(3);
        }
    }

    @Test
    void every_fault_is_told_with_its_line_and_nothing_is_kept_or_lost() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            Guest.Got got = paste(captain, HEAD + WON + "yesterday,N1,N1,S1,S2,11,12,side-in-11\n");
            assertThat(got.status()).isEqualTo(422);
            assertThat(got.text())
                    .contains(
                            "Nothing was kept: what is wrong with past-results.csv stands beside its field",
                                    "past-results.csv:3: date:",
                            "past-results.csv:3: home_2: N1 is listed in this game twice",
                                    "past-results.csv:3: format: \"side-in-11\" is not a scoring format");
            assertThat(got.body()).contains("yesterday,N1,N1,S1,S2,11,12,side-in-11");
            assertThat(paste(captain, "").text()).contains("past-results.csv:1: the file is missing");
            assertThat(paste(captain, "<script>alert(1)</script>").body()).doesNotContain("<script>alert");
            Guest.Got bytes = captain.sendInParts(
                    PAGE, PAGE, Map.of(FILE, ""), Map.of(FILE + "-file", new byte[] {(byte) 0xff, 0}));
            assertThat(bytes.status()).isEqualTo(422);
            assertThat(bytes.text()).contains("this is not UTF-8 text").doesNotContain("the file is missing");
            assertThat(kept(served, "N")).isZero();
        }
    }

    @Test
    void taking_back_needs_a_tick() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            paste(captain, HEAD + WON + STRANGERS);
            assertThat(captain.post(BACK, Map.of()).status()).isEqualTo(422);
            assertThat(captain.post(BACK, Map.of("every", "yes")).status()).isEqualTo(422);
            assertThat(captain.post(BACK, Map.of("game", "77")).status())
                    .as("gone already: the deputy may have been quicker")
                    .isEqualTo(200);
            assertThat(kept(served, "N")).isEqualTo(2);
        }
    }

    @Test
    void at_most_so_many_are_kept() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            StringBuilder rows = new StringBuilder(HEAD);
            for (int i = 0; i < GivePastGames.MOST; i++) {
                rows.append(WON);
            }
            assertThat(paste(captain, rows.toString()).text()).contains(GivePastGames.MOST + " games kept");
            assertThat(captain.get(PAGE).body().length())
                    .as("a page under 300 kB")
                    .isLessThan(300_000);
            Guest.Got more = paste(captain, HEAD + STRANGERS);
            assertThat(more.status()).isEqualTo(422);
            assertThat(more.text()).contains("At most " + GivePastGames.MOST + " earlier games of a club are kept");
        }
    }

    @Test
    void nobody_else_sees_or_changes_them() {
        try (Served served = served()) {
            paste(served.captain("N"), HEAD + WON);
            for (Guest other : List.of(
                    served.stranger(),
                    served.captain("S"),
                    served.player("N", "N1"),
                    served.as(Role.ORGANISER),
                    served.as(Role.REFEREE),
                    served.as(Role.DESK))) {
                assertThat(other.get(PAGE).text()).doesNotContain("2026-05-02");
                assertThat(other.get(PAGE + "/" + FILE).body()).doesNotContain("2026-05-02");
                other.post(BACK, Map.of("game", "1"));
                other.post(BACK, Map.of("every", "yes", "all", "yes"));
            }
            assertThat(kept(served, "N")).isEqualTo(1);
            assertThat(kept(served, "S")).isZero();
        }
    }

    private static Map<String, String> one(String... instead) {
        Map<String, String> typed = new TreeMap<>(Map.of(
                "one-ours-1", "N1",
                "one-ours-2", "N2",
                "one-points-ours", "11",
                "one-points-theirs", "2",
                "one-theirs-1", "S1",
                "one-theirs-2", "Somebody else",
                "one-date", "2026-05-02",
                "one-format", "side-out-11"));
        for (int i = 0; i < instead.length; i += 2) {
            typed.put(instead[i], instead[i + 1]);
        }
        return typed;
    }

    @Test
    void one_game_is_given_by_a_form_and_counts_like_one_from_a_file() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String before = captain.get(RATINGS).text();
            assertThat(captain.send(PAGE, PAGE + "/one", one()).status()).isEqualTo(200);
            assertThat(captain.get(PAGE + "/" + FILE).body())
                    .isEqualTo(HEAD + "2026-05-02,N1,N2,S1,Somebody else,11,2,side-out-11\n");
            assertThat(captain.get(RATINGS).text()).isNotEqualTo(before);
            captain.send(PAGE, PAGE + "/one", one());
            assertThat(kept(served, "N")).as("the same game once").isEqualTo(1);
        }
    }

    @Test
    void one_game_that_cannot_be_is_refused_with_each_reason_and_stays_typed() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            Guest.Got got = captain.send(
                    PAGE, PAGE + "/one", one("one-ours-2", "N1", "one-points-theirs", "10", "one-theirs-2", ""));
            assertThat(got.status()).isEqualTo(422);
            assertThat(got.text()).contains("This game names the same player twice", "This must be filled in.");
            assertThat(got.body()).contains("value=\"2026-05-02\"");
            got = captain.send(PAGE, PAGE + "/one", one("one-points-theirs", "10"));
            assertThat(got.text()).contains("11-10");
            got = captain.send(PAGE, PAGE + "/one", one("one-points-theirs", "-1", "one-format", "side-in-11"));
            assertThat(got.text()).contains("\"-1\" is not a whole number", "no way to score called");
            assertThat(kept(served, "N")).isZero();
        }
    }

    @Test
    void the_numbers_are_tried_on_the_games_that_the_own_club_knows() {
        String tried = "/captain/record/tried";
        String nothing = "There is nothing to try yet.";
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(captain.get(tried).text()).contains("Would these numbers have been right for us?", nothing);
            StringBuilder rows = new StringBuilder(HEAD);
            for (int day = 1; day <= 28; day++) {
                rows.append("2026-04-%02d,N1,N2,S1,S2,11,%d,side-out-11\n".formatted(day, day % 4));
                rows.append("2026-04-%02d,N3,N4,S3,S4,%d,11,side-out-11\n".formatted(day, day % 5));
            }
            paste(captain, rows.toString());
            assertThat(captain.get(tried).text())
                    .contains(
                            "38 earlier games of your players forecast. Yes: the chances were better than a coin, beyond doubt.",
                            "56 earlier games are known to you.",
                            "Games by the chance that was said")
                    .doesNotContain(nothing);
            assertThat(served.captain("S").get(tried).text()).contains(nothing);
            assertThat(served.as(Role.ORGANISER).get(tried).text()).doesNotContain("earlier games");
        }
    }
}
