package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** The organiser tries the conditions before anybody plays. */
class DryRunPageTest {
    @Test
    void tells_how_often_and_shows_one_of_each_way() {
        Days day = Days.aDay().with(Setting.DECIDER, "none").with(Setting.LEVEL_TEAMS, "rubbers-difference>lots");
        try (Served served = Served.empty(Days.moment("08:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            Guest organiser = served.as(Role.ORGANISER);
            Guest.Got ran =
                    organiser.send("/organiser/dry-run", "/organiser/dry-run", Map.of("clubs", "3", "seed", "42"));
            assertThat(ran.text())
                    .contains(
                            "of 2000 pools end in a lot",
                            "with 95 % certainty",
                            "(number 42)",
                            "clubs level at place 1",
                            "A v B");
            assertThat(organiser
                            .send("/organiser/dry-run", "/organiser/dry-run", Map.of("clubs", "3", "seed", "42"))
                            .text())
                    .contains(ran.text()
                            .substring(ran.text().indexOf("of 2000"), ran.text().indexOf("(number 42)")));
            assertThat(organiser
                            .send("/organiser/dry-run", "/organiser/dry-run", Map.of("clubs", "99", "seed", "x"))
                            .status())
                    .isEqualTo(200);
            assertThat(served.as(Role.DESK).get("/organiser/dry-run").status()).isEqualTo(403);
        }
    }
}
