package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A form of officials that names players of a club holds that club's players and nobody else's. */
class SheetsOfOneClubTest {
    private static final String DESK = "/desk/tie/A1";

    private static String form(Guest.Got page, String title) {
        String form = page.body().substring(page.body().indexOf(title));
        return form.substring(0, form.indexOf("</form>"));
    }

    @Test
    void a_pair_changed_after_the_opening_is_chosen_from_its_own_club() {
        try (Served served = Served.of(Days.oneTie().opened("A1"), Days.moment("10:00"))) {
            Guest referee = served.as(Role.REFEREE);
            Guest.Got page = referee.get(DESK);
            assertThat(form(page, "Change a pair of Club N"))
                    .contains("value=\"N1\"", "value=\"N8\"")
                    .doesNotContainPattern("value=\"S\\d\"");
            assertThat(form(page, "Change a pair of Club S"))
                    .contains("value=\"S1\"", "value=\"S8\"")
                    .doesNotContainPattern("value=\"N\\d\"");
            Map<String, String> pair = new LinkedHashMap<>(Map.of(
                    "replace-side", "away",
                    "replace-away-rubber", "1",
                    "replace-away-pair", "S1",
                    "replace-away-by", "Ines"));
            Guest.Got alone = referee.send(DESK, DESK + "/replace", pair);
            assertThat(alone.status()).isEqualTo(422);
            assertThat(alone.body()).contains("id=\"replace-away-pair-error\"");
        }
    }

    /** Both sheets are missing: each club has its own form, and its names do not get mixed up with the other's. */
    @Test
    void a_missing_sheet_is_supplied_from_the_squad_of_its_own_club() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            served.at(Days.moment("09:55"));
            Guest referee = served.as(Role.REFEREE);
            Guest.Got page = referee.get(DESK);
            assertThat(form(page, "No sheet from Club N"))
                    .contains("value=\"N1\"", "name=\"home-sheet-1-first\"")
                    .doesNotContain("value=\"S1\"");
            assertThat(form(page, "No sheet from Club S"))
                    .contains("value=\"S1\"", "name=\"away-sheet-1-first\"")
                    .doesNotContain("value=\"N1\"");
            Map<String, String> sheet = new LinkedHashMap<>(
                    Map.of("supply-side", "away", "away-supply-reason", "From paper.", "away-supply-by", "Ines"));
            for (int rubber = 1; rubber <= 4; rubber++) {
                sheet.put("away-sheet-" + rubber + "-first", "S" + (2 * rubber - 1));
                sheet.put("away-sheet-" + rubber + "-second", "S" + 2 * rubber);
            }
            Guest.Got done = referee.send(DESK, DESK + "/supply", sheet);
            assertThat(done.status()).as(done.text()).isEqualTo(200);
            assertThat(form(done, "No sheet from Club N")).contains("name=\"sheet-1-first\"");
            for (int rubber = 1; rubber <= 4; rubber++) {
                sheet.put("sheet-" + rubber + "-first", "N" + (2 * rubber - 1));
                sheet.put("sheet-" + rubber + "-second", "N" + 2 * rubber);
            }
            sheet.putAll(Map.of("supply-side", "home", "supply-reason", "From paper.", "supply-by", "Ines"));
            referee.send(DESK, DESK + "/supply", sheet);
            served.service.openWhatIsDue();
            assertThat(served.ledger
                            .event()
                            .tie(TieId.of("A1"))
                            .orElseThrow()
                            .opened()
                            .get(RubberNo.of(4))
                            .away())
                    .contains(Pair.of(PlayerId.of("S7"), PlayerId.of("S8")));
        }
    }
}
