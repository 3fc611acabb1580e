package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Role;

/** What used to happen in silence: who did it reads what became of it, and whoever it concerns reads it too. */
class SilenceTest {
    private static final String SHEET = "/captain/sheet/A1";
    private static final String DECIDER = "/captain/decider/A1";
    private final Served served = served();
    private final Guest home = served.captain("N");
    private final Guest away = served.captain("S");

    private static Served served() {
        Days day = Days.oneTie();
        return Served.of(day, Days.moment("09:00"));
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private static Map<String, String> names(String club, String... more) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("step", "seal"));
        for (int i = 0; i < 8; i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), club + (i + 1));
        }
        for (String one : more) {
            fields.put(one, "yes");
        }
        return fields;
    }

    @Test
    void who_has_sealed_reads_first_that_it_is_in() {
        assertThat(home.get(SHEET).text()).doesNotContain("Yours is in");
        assertThat(home.send(SHEET, SHEET, names("N")).text())
                .containsPattern("Sheet against Club S Yours is in · both open at");
        assertThat(home.get(SHEET).text()).contains("Yours is in");
        assertThat(away.get(SHEET).text()).doesNotContain("Yours is in");
    }

    @Test
    void who_is_in_reads_that_the_other_is_missing_and_until_when() {
        assertThat(home.send(SHEET, SHEET, names("N")).text())
                .containsPattern("theirs is not in yet; it may still come until \\d");
        away.send(SHEET, SHEET, names("S"));
        assertThat(home.get(SHEET).text()).doesNotContain("not in yet");
    }

    @Test
    void asking_for_the_opening_is_read_by_who_asked_and_by_the_other_captain() {
        home.send(SHEET, SHEET, names("N"));
        away.send(SHEET, SHEET, names("S"));
        assertThat(home.send(SHEET, SHEET + "/ask", Map.of()).text())
                .contains("You asked to open now. Club S sees that here");
        assertThat(away.get(SHEET).text()).contains("Club N asks to open both now");
        away.send(SHEET, SHEET + "/ask", Map.of());
        served.at(Days.moment("09:01"));
        assertThat(home.get(SHEET).text()).doesNotContain("asked to open", "asks to open");
    }

    @Test
    void letting_the_club_see_it_is_confirmed_and_can_be_taken_back() {
        Guest player = served.player("N", "N1"); // what a link may read is settled when the sheet is sealed
        home.send(SHEET, SHEET, names("N"));
        assertThat(home.send(SHEET, SHEET + "/tell", Map.of()).text())
                .contains("Your club sees who plays", "Hide it again");
        String told = player.get("/player/N1").text();
        assertThat(home.send(SHEET, SHEET + "/untell", Map.of()).text())
                .contains("Let my club see it now")
                .doesNotContain("Your club sees who plays");
        assertThat(player.get("/player/N1").text()).isNotEqualTo(told);
    }

    @Test
    void who_types_a_card_that_differs_reads_that_it_is_held() {
        served.given(List.of(), List.of());
        home.send(SHEET, SHEET, names("N"));
        away.send(SHEET, SHEET, names("S"));
        served.at(Days.moment("10:00"));
        Map<String, String> first = Map.of("home-1", "11", "away-1", "5", "how", "played", "confirmed", "yes");
        Map<String, String> other = Map.of("home-1", "11", "away-1", "8", "how", "played", "confirmed", "yes");
        String card = "/cards/A1/1";
        assertThat(home.send(card, card, first).text()).doesNotContain("readings of this card differ");
        Guest.Got typed = away.send(card, card, other);
        assertThat(typed.path()).isEqualTo(card);
        assertThat(typed.text()).contains("The readings of this card differ: 11-5 / 11-8");
        assertThat(home.get(card).text()).contains("The readings of this card differ");
    }

    /** Level at 10:20, due ten minutes later; at 10:22 a captain types another score. */
    private void levelAndHeld() {
        home.send(SHEET, SHEET, names("N"));
        away.send(SHEET, SHEET, names("S"));
        served.at(Days.moment("10:20"));
        for (int rubber = 1; rubber <= 4; rubber++) {
            served.given(
                    List.of(new tiewright.event.PlayFact.CardEntered(
                            tiewright.event.TieId.of("A1"),
                            tiewright.event.RubberNo.of(rubber),
                            Days.games(rubber < 3 ? "11-3" : "3-11"),
                            tiewright.event.How.PLAYED)),
                    List.of());
        }
        assertThat(home.get(DECIDER).text() + home.get("/captain").text()).doesNotContain("stands still");
        served.at(Days.moment("10:22"));
        home.send(
                "/cards/A1/1",
                "/cards/A1/1",
                Map.of("home-1", "11", "away-1", "4", "how", "played", "confirmed", "yes"));
    }

    @Test
    void both_captains_read_that_the_clock_of_the_decider_stands_still_and_how_much_is_left() {
        levelAndHeld();
        for (Guest captain : List.of(home, away)) {
            assertThat(captain.get(DECIDER).text())
                    .containsPattern(
                            "The clock of the decider stands still with \\d:00 left: two readings differ, Rubber 1: 11-3 / 11-4");
        }
    }

    @Test
    void a_request_for_the_opening_stands_on_the_first_page_of_both_captains() {
        home.send(SHEET, SHEET, names("N"));
        away.send(SHEET, SHEET, names("S"));
        assertThat(away.get("/captain").text()).doesNotContain("asks to open");
        home.send(SHEET, SHEET + "/ask", Map.of());
        Guest.Got asked = away.get("/captain");
        assertThat(asked.text()).contains("Club N asks to open both now. Agree to it, or leave it");
        assertThat(asked.body()).contains("href=\"" + SHEET + "\"");
        assertThat(home.get("/captain").text()).contains("You asked to open now; Club S reads it");
        away.send(SHEET, SHEET + "/ask", Map.of());
        served.at(Days.moment("09:01"));
        assertThat(home.get("/captain").text() + away.get("/captain").text())
                .doesNotContain("asked to open", "asks to open");
    }

    @Test
    void that_the_clock_of_the_decider_stands_still_is_on_the_first_page_of_both_captains() {
        levelAndHeld();
        for (Guest captain : List.of(home, away)) {
            assertThat(captain.get("/captain").text())
                    .containsPattern("The clock of the decider stands still with \\d:00 left");
            assertThat(captain.get("/captain").body()).contains("href=\"/captain/decider/A1\"");
        }
    }

    @Test
    void somebody_hurt_on_a_sheet_kept_on_the_phone_is_asked_about_too() {
        served.given(List.of(), List.of(new PrivateNote.HurtMarked(PlayerId.of("N3"), true)));
        assertThat(home.get(SHEET).body()).contains("data-hurt=\"N3\"");
        assertThat(away.get(SHEET).body()).contains("data-hurt=\"\"").doesNotContain("N3\"");
        String secret = "ab".repeat(32);
        String receipt = tiewright.sheet.Receipt.of(
                secret, tiewright.event.TieId.of("A1"), tiewright.event.ClubId.of("N"), Days.straight("N", 4));
        home.send(SHEET, SHEET, Map.of("step", "keep", "receipt", receipt));
        Map<String, String> handedIn = names("N");
        handedIn.putAll(Map.of("step", "hand-in", "secret", secret));
        assertThat(home.send(SHEET, SHEET, handedIn).text()).contains("Ask first, tick that you did");
        handedIn.put("hurt-asked", "yes");
        assertThat(home.send(SHEET, SHEET, handedIn).status()).isEqualTo(200);
        assertThat(home.get(SHEET).text()).contains("Yours is in");
    }

    @Test
    void somebody_marked_as_hurt_is_sealed_only_after_a_word() {
        served.given(List.of(), List.of(new PrivateNote.HurtMarked(PlayerId.of("N3"), true)));
        assertThat(home.get("/captain/proposal/A1").text()).contains("ask Player N3 first");
        assertThat(home.get("/captain/day").text()).contains("Player N3 is marked as hurt or ill today");
        Guest.Got asked = home.send(SHEET, SHEET, names("N"));
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.text()).contains("Player N3 is marked as hurt or ill today. Ask first");
        assertThat(served.as(Role.DESK).get("/desk/tie/A1").text()).doesNotContain("Club N: in");
        assertThat(home.send(SHEET, SHEET, names("N", "hurt-asked")).status()).isEqualTo(200);
    }

    @Test
    void two_captains_who_ask_the_same_get_different_draws_and_each_finds_the_own_again() {
        String ours = order(home);
        assertThat(order(home)).isEqualTo(ours);
        assertThat(order(away).replace("S", "N"))
                .as("the same squads, the same question")
                .isNotEqualTo(ours);
        assertThat(home.get("/captain/proposal/A1").body()).contains("/captain/proposal/A1?seed=2");
        assertThat(order(home, "?seed=2") + order(home, "?seed=3")).isNotEqualTo(ours + ours);
    }

    /** One pair may play everything, or the order is prescribed: there is no order to shuffle, and yet not everybody is told the same. */
    @ParameterizedTest
    @CsvSource({"MAX_RUBBERS_PER_PLAYER, 2", "ORDER_OF_STRENGTH, rank-sum"})
    void of_equal_sheets_each_captain_is_proposed_another_one(Setting setting, String value) {
        Days day = Days.oneTie().with(Setting.RUBBERS, "2").with(setting, value);
        try (Served other = Served.of(day, Days.moment("09:00"))) {
            Guest north = other.captain("N");
            String ours = order(north);
            assertThat(order(north)).isEqualTo(ours);
            assertThat(order(other.captain("S")).replace("S", "N")).isNotEqualTo(ours);
            assertThat(order(north, "?seed=2")).isNotEqualTo(ours);
        }
    }

    private static String order(Guest captain, String... query) {
        String body =
                captain.get("/captain/proposal/A1" + String.join("", query)).body();
        int at = body.indexOf("value=\"choose\"");
        StringBuilder order = new StringBuilder();
        java.util.regex.Matcher names = java.util.regex.Pattern.compile(
                        "name=\"sheet-\\d-(first|second)\" value=\"([NS]\\d)\"")
                .matcher(body.substring(at, body.indexOf("</form>", at)));
        while (names.find()) {
            order.append(names.group(2)).append(' ');
        }
        assertThat(order).isNotEmpty();
        return order.toString();
    }
}
