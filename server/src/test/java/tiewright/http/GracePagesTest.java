package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;

/** What a captain reads around the deadline of a sheet, 09:50 with five minutes of grace: never that something is closed which is open. */
class GracePagesTest {
    private static final String SHEET = "/captain/sheet/A1";
    private final Served served = served();

    private static Served served() {
        Days day = Days.oneTie()
                .with(Setting.LATE_SHEET, "grace")
                .with(Setting.GRACE_MINUTES, "5")
                .with(Setting.SHEET_DEADLINE_MINUTES, "10");
        return Served.of(day, Days.moment("09:00"));
    }

    @AfterEach
    void stop() {
        served.close();
    }

    @Test
    void within_the_grace_a_sheet_is_still_asked_for_and_until_when_is_said() {
        Guest captain = served.captain("N");
        assertThat(captain.get("/captain").text()).contains("09:50").doesNotContain("still taken", "see the desk");
        served.at(Days.moment("09:52"));
        assertThat(captain.get("/captain").text())
                .contains("Late, and still taken until 09:55")
                .doesNotContain("see the desk");
        assertThat(captain.get(SHEET).text())
                .contains("The deadline was 09:50: both open once both are in.")
                .doesNotContain("Both open at 09:50", "see the desk");
        served.at(Days.moment("09:56"));
        assertThat(captain.get("/captain").text())
                .contains("The deadline has passed: see the desk")
                .doesNotContain("still taken");
    }

    @Test
    void who_is_in_reads_no_opening_that_is_past_while_the_other_sheet_is_missing() {
        Guest captain = served.captain("N");
        captain.send(SHEET, SHEET, sheet());
        assertThat(captain.get(SHEET).text()).contains("both open at 09:50", "it may still come until 09:55");
        served.at(Days.moment("09:57"));
        assertThat(captain.get(SHEET).text())
                .contains("the deadline was 09:50; both open once theirs is in", "theirs not in")
                .doesNotContain("open at 09:50", "can come until");
    }

    @Test
    void who_has_named_the_pair_for_a_decider_reads_no_opening_that_is_past() {
        Days level = Days.oneTie().opened("A1").at("10:20").cards("A1", "11-3", "11-3", "3-11", "3-11");
        try (Served tie = Served.of(level, Days.moment("10:21"))) {
            Guest captain = tie.captain("N");
            captain.send(
                    "/captain/decider/A1",
                    "/captain/decider/A1",
                    Map.of("step", "seal", "sheet-D-first", "N1", "sheet-D-second", "N2"));
            assertThat(captain.get("/captain").text()).contains("Your pair is in. Both open at");
            tie.at(Days.moment("10:59"));
            assertThat(captain.get("/captain").text())
                    .contains("Your pair is in. Both open once the other club names theirs.")
                    .doesNotContain("Both open at");
        }
    }

    private static Map<String, String> sheet() {
        Map<String, String> fields = new HashMap<>(Map.of("step", "seal"));
        for (int i = 0; i < 8; i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), "N" + (i + 1));
        }
        return fields;
    }
}
