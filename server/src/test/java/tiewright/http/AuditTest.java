package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** Any shown result leads to who, when received, device and earlier values; a volunteer's link enters cards and nothing else. */
class AuditTest {
    private static Served day() {
        Days day = Days.oneTie().opened("A1");
        return Served.empty(Days.moment("10:05"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    private static void enter(Guest guest, String page, String home, String away, String reason) {
        Map<String, String> typed =
                new LinkedHashMap<>(Map.of("home-1", home, "away-1", away, "how", "played", "confirmed", "yes"));
        if (!reason.isEmpty()) {
            typed.put("reason", reason);
        }
        guest.post(page, guest.filled(page, page, typed));
    }

    @Test
    void a_result_leads_to_who_when_device_and_every_earlier_value() {
        try (Served served = day()) {
            enter(
                    served.enter(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "court 2"),
                    "/cards/A1/1",
                    "11",
                    "7",
                    "");
            served.clock.pass(java.time.Duration.ofMinutes(2));
            enter(served.enter(Role.DESK, Optional.empty(), Optional.empty(), "desk 1"), "/cards/A1/1", "7", "11", "");
            served.clock.pass(java.time.Duration.ofMinutes(7));
            Guest referee = served.as(Role.REFEREE);
            enter(referee, "/cards/A1/1/correct", "11", "7", "The card says 11-7.");
            enter(served.as(Role.DESK), "/cards/A1/2", "11", "3", "");
            Guest.Got cards = referee.get("/cards/A1");
            assertThat(cards.body()).contains("href=\"/log?tie=A1&amp;rubber=1\"");
            Guest.Got log = referee.get("/log?tie=A1&rubber=1");
            assertThat(log.text())
                    .containsSubsequence(
                            "settled as 11-7: The card says 11-7.",
                            "referee, referee",
                            "Card of tie A1, rubber 1: 7-11.",
                            "desk, desk 1",
                            "Card of tie A1, rubber 1: 11-7.",
                            "volunteer, court 2",
                            "device");
            assertThat(log.text()).contains("10:14", "10:07", "10:05").doesNotContain("11-3");
            assertThat(referee.get("/log?tie=%3Cb%3E&rubber=x").status()).isEqualTo(200);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/desk",
                "/desk/check-in",
                "/desk/tie/A1",
                "/desk/safety",
                "/log",
                "/captain",
                "/captain/sheet/A1",
                "/captain/squad",
                "/organiser",
                "/organiser/tables",
                "/organiser/rulings",
                "/organiser/cases",
                "/organiser/withdraw/N",
                "/organiser/correct/A1/1",
                "/organiser/clubs",
                "/organiser/links",
                "/organiser/help",
                "/organiser/dry-run",
                "/cards/A1/1/correct",
                "/protests"
            })
    void a_volunteer_gets_no_other_page(String page) {
        try (Served served = day()) {
            Guest volunteer = served.as(Role.VOLUNTEER);
            assertThat(volunteer.get("/cards/A1/1").status()).isEqualTo(200);
            long before = served.ledger.event().seq();
            assertThat(volunteer.get(page).status()).as(page).isEqualTo(403);
            assertThat(volunteer
                            .post(page, Map.of("player", "N1", "text", "x", "by", "x", "reason", "x"))
                            .status())
                    .as(page)
                    .isIn(403, 404, 405);
            assertThat(served.ledger.event().seq()).as(page).isEqualTo(before);
        }
    }

    /** No page has a form that goes to the log. */
    @Test
    void no_screen_can_change_the_log() {
        try (Served served = day()) {
            Guest organiser = served.as(Role.ORGANISER);
            assertThat(organiser.get("/log").body())
                    .doesNotContainPattern("<form method=\"post\" (?!action=\"/leave\")");
            assertThat(organiser.post("/log", Map.of("entry", "1")).status()).isIn(404, 405);
        }
    }
}
