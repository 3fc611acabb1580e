package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** One club has no sheet at the deadline: nothing happens by the clock, a person rules, then both open. */
class MissingSideTest {
    private static final String PAGE = "/desk/tie/A1";
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));

    private static Served oneSideIn() {
        Days day = Days.oneTie();
        Served served = Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
        served.ask(Days.captain("N"), new SealSheet(SHEETS, ClubId.of("N"), Days.straight("N", 4), "ab".repeat(32)));
        return served;
    }

    private static Tie tie(Served served) {
        return served.ledger.event().tie(TieId.of("A1")).orElseThrow();
    }

    @Test
    void the_clock_alone_opens_and_forfeits_nothing() {
        try (Served served = oneSideIn()) {
            Guest referee = served.as(Role.REFEREE);
            assertThat(referee.get(PAGE).body()).doesNotContain(PAGE + "/forfeit");
            served.at(Days.moment("11:00"));
            assertThat(tie(served).isOpened()).isFalse();
            assertThat(tie(served).cards()).isEmpty();
            assertThat(served.as(Role.DESK).get(PAGE).body())
                    .as("the desk does not rule")
                    .doesNotContain(PAGE + "/forfeit");
        }
    }

    @Test
    void a_forfeited_side_opens_with_the_other_and_loses_by_walkover() {
        try (Served served = oneSideIn()) {
            served.at(Days.moment("09:52"));
            Guest.Got ruled = served.as(Role.REFEREE)
                    .send(
                            PAGE,
                            PAGE + "/forfeit",
                            Map.of(
                                    "forfeit-side",
                                    "away",
                                    "forfeit-reason",
                                    "No sheet by the deadline and the grace of the conditions.",
                                    "forfeit-by",
                                    "Ines"));
            assertThat(ruled.status()).as(ruled.text()).isEqualTo(200);
            served.service.openWhatIsDue();
            assertThat(tie(served).isOpened()).isTrue();
            assertThat(served.ledger.event().progress(tie(served)).winner()).contains(Side.HOME);
            assertThat(served.stranger().get("/notices").text())
                    .contains("Ruling 1", "No sheet by the deadline", "Ines");
            assertThat(served.stranger().get("/tie/A1").text()).contains("walkover");
        }
    }

    @Test
    void the_players_to_name_are_those_of_the_club_that_is_missing() {
        try (Served served = oneSideIn()) {
            served.at(Days.moment("09:52"));
            List<String> offered = Jsoup.parse(served.as(Role.REFEREE).get(PAGE).body())
                    .select("form[action=" + PAGE + "/supply] select[name=sheet-1-first] option[value~=.]")
                    .eachAttr("value");
            assertThat(offered).hasSize(8).allMatch(player -> player.startsWith("S"));
        }
    }

    @Test
    void a_supplied_side_opens_with_the_names_the_referee_gave() {
        try (Served served = oneSideIn()) {
            served.at(Days.moment("09:52"));
            Map<String, String> sheet = new LinkedHashMap<>(Map.of(
                    "supply-side",
                    "away",
                    "supply-reason",
                    "Order of strength, as the conditions say.",
                    "supply-by",
                    "Ines"));
            for (int rubber = 1; rubber <= 4; rubber++) {
                sheet.put("sheet-" + rubber + "-first", "S" + (2 * rubber - 1));
                sheet.put("sheet-" + rubber + "-second", "S" + 2 * rubber);
            }
            Guest.Got ruled = served.as(Role.REFEREE).send(PAGE, PAGE + "/supply", sheet);
            assertThat(ruled.status()).as(ruled.text()).isEqualTo(200);
            served.service.openWhatIsDue();
            assertThat(tie(served).opened().get(RubberNo.of(4)).away())
                    .contains(Pair.of(PlayerId.of("S7"), PlayerId.of("S8")));
        }
    }

    @Test
    void the_form_is_filled_in_as_the_conditions_foresee() {
        Days day = Days.aDay()
                .with(Setting.LATE_SHEET, "strength-order")
                .clubs("N", "S")
                .courts("1")
                .poolTie("A1", "A", 1, "N", "S")
                .timed("A1", "10:00", "1");
        try (Served served = Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            served.ask(
                    Days.captain("N"), new SealSheet(SHEETS, ClubId.of("N"), Days.straight("N", 4), "ab".repeat(32)));
            served.at(Days.moment("09:52"));
            Guest referee = served.as(Role.REFEREE);
            assertThat(FormFields.of(referee.get(PAGE), PAGE + "/supply"))
                    .containsEntry("sheet-1-first", "S1")
                    .containsEntry("sheet-1-second", "S2")
                    .containsEntry("sheet-4-second", "S8");
            assertThat(tie(served).isOpened())
                    .as("nothing is applied without a person")
                    .isFalse();
        }
    }

    @Test
    void a_ruling_without_a_reason_or_a_name_is_refused_beside_its_field() {
        try (Served served = oneSideIn()) {
            served.at(Days.moment("09:52"));
            Guest.Got refused = served.as(Role.REFEREE)
                    .send(PAGE, PAGE + "/forfeit", Map.of("forfeit-side", "away", "forfeit-by", "Ines"));
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.body()).contains("value=\"Ines\"");
            assertThat(served.ledger.event().rulings()).isEmpty();
        }
    }
}
