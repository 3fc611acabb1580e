package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.Recorded;

/** Where a tie can come to a decider, both captains have a way to the pair for it; where it cannot, neither has. */
class DeciderDoorTest {
    private static final String DOOR = "/captain/decider/A1";

    private static Days ofThree() {
        return Days.oneTie()
                .with(Setting.RUBBERS, "3")
                .opened("A1")
                .card("A1", "1", "15-5")
                .card("A1", "2", "5-15");
    }

    private static Served served(Days day) {
        return Served.empty(day.now())
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    @Test
    void a_void_rubber_of_three_opens_the_way_to_the_decider() {
        try (Served served = served(ofThree().card("A1", "3", "", How.VOID))) {
            Guest captain = served.captain("N");
            assertThat(captain.get("/captain").text()).contains("Name the pair");
            assertThat(captain.get("/captain").body()).contains(DOOR);
            assertThat(captain.send(DOOR, DOOR, Map.of("step", "seal", "sheet-D-first", "N1", "sheet-D-second", "N2"))
                            .text())
                    .contains("sealed once");
        }
    }

    @Test
    void advice_takes_its_pair_into_the_form_by_a_press_and_seals_nothing() {
        Days level = Days.oneTie().opened("A1").cards("A1", "11-5", "11-5", "5-11", "5-11");
        try (Served served = served(level)) {
            Guest captain = served.captain("N");
            Guest.Got advice = captain.get("/captain/proposal/A1");
            assertThat(advice.text()).contains("For the decider", "Take this pair");
            java.util.regex.Matcher use = java.util.regex.Pattern.compile(
                            "name=\"sheet-D-first\" value=\"(N\\d)\".*?name=\"sheet-D-second\" value=\"(N\\d)\"",
                            java.util.regex.Pattern.DOTALL)
                    .matcher(advice.body());
            assertThat(use.find()).as(advice.body()).isTrue();
            Guest.Got form = captain.send(
                    "/captain/proposal/A1",
                    DOOR,
                    Map.of("step", "choose", "sheet-D-first", use.group(1), "sheet-D-second", use.group(2)));
            assertThat(form.body())
                    .containsPattern("value=\"" + use.group(1) + "\"[^>]*selected")
                    .containsPattern("value=\"" + use.group(2) + "\"[^>]*selected");
            assertThat(served.ledger
                            .event()
                            .exchange(tiewright.event.ExchangeId.decider(tiewright.event.TieId.of("A1")))
                            .home()
                            .isIn())
                    .isFalse();
        }
    }

    @Test
    void without_a_void_rubber_three_rubbers_lead_to_no_decider() {
        try (Served served = served(ofThree())) {
            assertThat(served.captain("N").get("/captain").body()).doesNotContain(DOOR);
        }
    }
}
