package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** A table provisional until its time for objections, a protest with the day as it stood, a decision, then final by name. */
class ProtestPagesTest {
    private static Served day() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-5", "11-5", "11-5", "5-11");
        return Served.empty(Days.moment("11:30"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    @Test
    void from_provisional_through_a_protest_to_final_by_name_and_time() {
        try (Served served = day()) {
            Guest anybody = served.stranger();
            assertThat(anybody.get("/tables").text()).contains("Provisional, objections until 11:45");
            served.clock.pass(java.time.Duration.ofMinutes(4));
            Guest captain = served.captain("S");
            Guest.Got kept = captain.send(
                    "/protests", "/protests", Map.of("tie", "A1", "text", "The net was too high.", "by", "S. Captain"));
            assertThat(kept.text())
                    .contains(
                            "Protest 1: Club S",
                            "Signed by S. Captain, received at 11:34.",
                            "Tables as they stood at 11:34");
            assertThat(kept.body()).contains("href=\"/tables?at=11:34\"");
            assertThat(served.captain("N").get("/protests").text()).doesNotContain("The net was too high.");
            assertThat(anybody.get("/protests").status()).isEqualTo(403);
            Guest referee = served.as(Role.REFEREE);
            assertThat(referee.get("/desk").text()).contains("Protest 1 of Club S waits to be decided.");
            Map<String, String> early = Map.of("sign-A-by", "R. Referee", "sign-A-all-the-same", "yes");
            assertThat(referee.send("/organiser/tables", "/organiser/tables/sign/A", early)
                            .text())
                    .contains("Protest 1 about pool A is not decided.");
            assertThat(referee.send(
                                    "/protests",
                                    "/protests/1",
                                    Map.of(
                                            "decide-1-upheld",
                                            "no",
                                            "decide-1-decision",
                                            "It stands.",
                                            "decide-1-reason",
                                            "The net was measured.",
                                            "decide-1-by",
                                            ""))
                            .status())
                    .isEqualTo(422);
            referee.send(
                    "/protests",
                    "/protests/1",
                    Map.of(
                            "decide-1-upheld",
                            "no",
                            "decide-1-decision",
                            "It stands.",
                            "decide-1-reason",
                            "The net was measured.",
                            "decide-1-by",
                            "R. Referee"));
            assertThat(anybody.get("/notices").text())
                    .contains("Protest 1 of Club S, tie A1. Dismissed. It stands. Ruling 1.");
            assertThat(captain.get("/protests").text()).contains("Ruling 1: dismissed, at 11:34");
            served.clock.pass(java.time.Duration.ofMinutes(12));
            referee.send("/organiser/tables", "/organiser/tables/sign/A", Map.of("sign-A-by", "R. Referee"));
            assertThat(anybody.get("/tables").text()).contains("Final, by R. Referee, 11:46.");
        }
    }
}
