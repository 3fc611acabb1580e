package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Role;
import tiewright.event.TieId;

/** A tie of a women's, a men's and a mixed rubber, from the conditions to the table, through the pages alone. */
class KindsJourneyTest {
    private static final String PASTE = "/organiser/clubs/paste";

    private final Served served = Served.empty(Instant.parse("2027-09-04T06:00:00Z"));
    private final Guest organiser = served.as(Role.ORGANISER);

    @AfterEach
    void stop() {
        served.close();
    }

    private Guest.Got done(String page, String action, Map<String, String> changes) {
        Guest.Got got = FormFields.fill(organiser, page, action, changes);
        assertThat(got.status()).as(action + ": " + got.text()).isEqualTo(200);
        return got;
    }

    private void setUp() {
        done(
                "/organiser/event",
                "/organiser/event",
                Map.of(
                        "name", "Harvest Cup",
                        "date", "2027-09-04",
                        "venue", "Mill Hall",
                        "zone", "UTC",
                        "starts", "9:00",
                        "closes", "18:00"));
        done("/organiser/courts", "/organiser/courts/add", Map.of("court", "1-3"));
        Guest.Got refused = FormFields.fill(
                organiser,
                "/organiser/conditions?preset=Club+day",
                "/organiser/conditions",
                Map.of("rubbers", "4", "rubber_kinds", "women;men;mixed"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text())
                .contains("\"women;men;mixed\" names 3 rubbers, and a tie has 4. Give each rubber its kind.");
        done(
                "/organiser/conditions?preset=Club+day",
                "/organiser/conditions",
                Map.of("rubbers", "3", "rubber_kinds", "women;men;mixed"));
        squads();
        done(
                "/organiser/draw",
                "/organiser/draw",
                Map.of("pools", "1", "spokenSeed", "three red hats", "witness", "Ines"));
        String tie = "tie-" + tie() + "-";
        done("/organiser/times", "/organiser/times", Map.of(tie + "start", "10:00", tie + "court", "1"));
    }

    private TieId tie() {
        return served.ledger.event().ties().keySet().iterator().next();
    }

    /** Six of each club: two who play in women's rubbers, two in men's, one of each more. */
    private void squads() {
        StringBuilder list = new StringBuilder("club\tname\tplays\n");
        for (String club : List.of("Brackenfold", "Hollowmere")) {
            List<String> plays = List.of("women", "women", "men", "men", "women", "men");
            for (int i = 0; i < plays.size(); i++) {
                list.append(club + "\tPlayer " + (i + 1) + " " + club + "\t" + plays.get(i) + "\n");
            }
        }
        Guest.Got shown =
                organiser.sendInParts(PASTE, PASTE, Map.of("list", list.toString(), "press", "look"), Map.of());
        Map<String, String> again = new LinkedHashMap<>(FormFields.of(shown, PASTE));
        again.put("press", "keep");
        organiser.post(PASTE, again);
        assertThat(served.ledger.directory().stated()).hasSize(12);
        assertThat(organiser.get("/organiser/clubs").text()).doesNotContain("has no pair for a rubber of some kind");
    }

    private Guest.Got seals(Guest captain, String club, String numbers) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("step", "seal"));
        String[] players = numbers.split(" ");
        for (int i = 0; i < players.length; i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), club + "-" + players[i]);
        }
        String page = "/captain/sheet/" + tie();
        return captain.send(page, page, fields);
    }

    @Test
    void a_tie_of_three_kinds_is_sealed_opened_played_and_counted() {
        setUp();
        Guest home = served.captain("BRA");
        Guest away = served.captain("HOL");
        Guest.Got form = home.get("/captain/sheet/" + tie());
        assertThat(form.text())
                .contains("Rubber 1 (women)", "Rubber 2 (men)", "Rubber 3 (mixed)")
                .contains("has not stated to play in women's rubbers");
        Guest.Got wrong = seals(home, "BRA", "1 3 2 4 5 6");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text())
                .contains("Rubber 1 is for women, and Player 3 Brackenfold has not stated to play in women's rubbers.")
                .contains("Rubber 2 is for men, and Player 2 Brackenfold has not stated to play in men's rubbers.");
        assertThat(home.get("/captain/proposal/" + tie()).text()).contains("(women)", "(men)", "(mixed)");
        assertThat(seals(home, "BRA", "1 2 3 6 4 4").status()).isEqualTo(422);
        assertThat(seals(home, "BRA", "1 2 3 4 5 6").status()).isEqualTo(200);
        assertThat(seals(away, "HOL", "1 5 3 4 6 2").status()).isEqualTo(200);
        served.at(Instant.parse("2027-09-04T09:46:00Z"));
        assertThat(served.stranger().get("/tie/" + tie()).text())
                .contains("Rubber 1 (women)", "Player 5 Hollowmere", "Rubber 3 (mixed)");
        replaces();
        cards();
        assertThat(served.stranger().get("/tables").text()).contains("Brackenfold", "1", "2-1");
        assertThat(served.stranger().get("/paper/cards").text()).contains("Rubber 2 (men)");
        assertThat(served.stranger().get("/paper/sheets").text()).contains("Rubber 2 (men)");
    }

    /** Nobody has stated anything: what cannot be filled is said, and every page answers. */
    @Test
    void a_squad_that_may_fill_no_rubber_reads_so_everywhere() {
        Days day = Days.oneTie().with(Setting.RUBBER_KINDS, "women;men;mixed;women");
        try (Served nobody = Served.of(day, Days.moment("09:00"))) {
            Guest captain = nobody.captain("N");
            for (String page : List.of(
                    "/captain",
                    "/captain/sheet/A1",
                    "/captain/proposal/A1",
                    "/captain/decider/A1",
                    "/captain/day",
                    "/captain/squad",
                    "/captain/record",
                    "/tie/A1",
                    "/tables")) {
                Guest.Got got = captain.get(page);
                assertThat(got.status()).as(page + ": " + got.text()).isEqualTo(200);
            }
            assertThat(captain.get("/captain/proposal/A1").text())
                    .contains("no two of them may stand in a rubber of this tie. Ask the organiser to enter it.")
                    .doesNotContain("Fewer than two");
        }
    }

    private void replaces() {
        Guest desk = served.as(Role.DESK);
        String page = "/desk/tie/" + tie();
        String side = "replace-"
                + served.ledger
                        .event()
                        .tie(tie())
                        .flatMap(tie -> tie.sideOf(ClubId.of("BRA")))
                        .orElseThrow()
                        .code();
        Guest.Got refused = desk.send(
                page,
                page + "/replace",
                Map.of(
                        "replace-side",
                        side.substring("replace-".length()),
                        side + "-rubber",
                        "1",
                        side + "-pair",
                        "BRA-1",
                        side + "-partner",
                        "BRA-3",
                        side + "-door",
                        "no-show",
                        side + "-by",
                        "Ines"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Rubber 1 is for women, and Player 3 Brackenfold has not stated");
    }

    private void cards() {
        Guest desk = served.as(Role.DESK);
        String[] points = {"11 5", "7 11", "11 8"};
        for (int rubber = 1; rubber <= 3; rubber++) {
            String page = "/cards/" + tie() + "/" + rubber;
            assertThat(desk.get(page).text())
                    .contains("(" + List.of("women", "men", "mixed").get(rubber - 1) + ")");
            String[] game = points[rubber - 1].split(" ");
            Map<String, String> score = Map.of("home-1", game[0], "away-1", game[1], "how", "played");
            desk.send(page, page, score);
            Map<String, String> confirmed = desk.filled(page, page, score);
            confirmed.put("confirmed", "yes");
            assertThat(desk.post(page, confirmed).status()).isEqualTo(200);
        }
    }
}
