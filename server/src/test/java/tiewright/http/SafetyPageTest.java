package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.FactKind;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** The safety panel: what a typed reading gives, what is logged, and that play stays as it is. */
class SafetyPageTest {
    private static final String PAGE = "/desk/safety";
    private final Days day = Days.oneTie().opened("A1");
    private final Served served = Served.empty(Days.moment("15:00"))
            .given(day.facts().stream().map(Recorded::fact).toList(), List.of());

    @AfterEach
    void stop() {
        served.close();
    }

    private Guest.Got typed(Role role, String measure, String degrees, String press, String decision, String by) {
        return served.as(role)
                .send(
                        PAGE,
                        PAGE,
                        Map.of("measure", measure, "degrees", degrees, "press", press, "decision", decision, "by", by));
    }

    @Test
    void a_typed_reading_gives_the_caution_of_its_tier_and_logs_nothing() {
        Guest.Got got = typed(Role.DESK, "wbgt", "30.5", "look", "", "");
        assertThat(got.status()).isEqualTo(200);
        assertThat(got.text())
                .contains(
                        "Caution",
                        "WBGT 30.5 °C: the conditions of this event ask for caution from 28 °C",
                        "severe warning",
                        "A number is not a clearance. Stop if anyone feels ill. The organiser decides.",
                        "override these settings");
        assertThat(got.body()).contains("value=\"30.5\"");
        assertThat(served.ledger.event().heat()).isEmpty();
        assertThat(typed(Role.DESK, "wbgt", "27,9", "look", "", "").text()).contains("That is no clearance to play");
        assertThat(typed(Role.DESK, "wbgt", "31", "look", "", "").text())
                .contains("The conditions stop play here", "stop play from 31 °C");
        assertThat(typed(Role.DESK, "air", "36", "look", "", "").text()).contains("Air 36.0 °C", "caution from 35 °C");
    }

    @Test
    void a_decision_is_logged_with_its_name_and_play_is_left_alone() {
        var ties = served.ledger.event().ties();
        Guest.Got got = typed(Role.REFEREE, "wbgt", "30.5", "log", "Ten minutes between rubbers", "Ines Roth");
        assertThat(got.status()).isEqualTo(200);
        assertThat(got.text())
                .contains("15:00: WBGT 30.5 °C, caution under the conditions. Ines Roth: Ten minutes between rubbers");
        assertThat(served.as(Role.DESK).get("/log").text()).contains("Ines Roth decided: Ten minutes between rubbers");
        assertThat(served.ledger.event().ties()).isEqualTo(ties);
        assertThat(served.ledger.facts(0))
                .extracting(one -> one.fact().kind())
                .filteredOn(FactKind.NOTICE_POSTED::equals)
                .isEmpty();
    }

    @Test
    void a_faulty_form_says_why_beside_the_field_and_keeps_what_was_typed() {
        Guest.Got got = typed(Role.DESK, "wbgt", "warm", "log", "Go on", "");
        assertThat(got.status()).isEqualTo(422);
        assertThat(got.text()).contains("\"warm\" is not a temperature");
        assertThat(got.body()).contains("value=\"warm\"", "Go on");
        Guest.Got nameless = typed(Role.DESK, "wbgt", "30.5", "log", "Go on", "");
        assertThat(nameless.status()).isEqualTo(422);
        assertThat(nameless.text()).contains("Write the name of the person who signs");
        assertThat(nameless.body()).contains("value=\"30.5\"", "Go on");
        assertThat(served.ledger.event().heat()).isEmpty();
    }

    @Test
    void three_thermometers_give_the_published_wbgt() {
        Guest.Got got = served.as(Role.DESK)
                .send(PAGE, PAGE + "/thermometers", Map.of("wet", "25", "globe", "40", "air", "32"));
        assertThat(got.text()).contains("WBGT 28.7 °C");
        assertThat(got.body()).contains("value=\"28.7\"");
        assertThat(served.as(Role.DESK)
                        .send(PAGE, PAGE + "/thermometers", Map.of("wet", "x", "globe", "", "air", "32"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void it_is_for_those_who_run_the_day_and_strangers_read_nothing_of_it() {
        typed(Role.ORGANISER, "wbgt", "30.5", "log", "Shade for all", "Ines Roth");
        for (Guest other :
                List.of(served.stranger(), served.captain("N"), served.player("N", "N1"), served.as(Role.VOLUNTEER))) {
            assertThat(other.get(PAGE).status()).isEqualTo(403);
            assertThat(other.post(PAGE, Map.of("measure", "wbgt", "degrees", "30", "decision", "x", "by", "y"))
                            .status())
                    .isEqualTo(403);
        }
        assertThat(served.stranger().get("/notices").text()).doesNotContain("Ines Roth");
    }
}
