package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

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
}
