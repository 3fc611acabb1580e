package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** A club goes home, through the pages: the treatments side by side, then one ruling. */
class WithdrawalPagesTest {
    private static final String PAGE = "/organiser/withdraw/E";

    static Served day() {
        Days day = Days.aDay()
                .clubs("N", "S", "E")
                .with(Setting.DECIDER, "none")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "E", "N")
                .poolTie("A3", "A", 3, "S", "E")
                .knockoutTie("F", 1, "A-1", "A-2")
                .opened("A1")
                .cards("A1", "11-5", "11-5", "11-5", "5-11")
                .opened("A2")
                .cards("A2", "11-5", "11-5", "11-5", "5-11");
        return Served.empty(Days.moment("12:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    @Test
    void the_treatments_stand_side_by_side_and_nothing_is_chosen() {
        try (Served served = day()) {
            Guest referee = served.as(Role.REFEREE);
            Guest.Got page = referee.get(PAGE);
            assertThat(page.path()).isEqualTo(PAGE);
            assertThat(page.text())
                    .contains(
                            "As it stands",
                            "Annul them",
                            "Keep what was played",
                            "Award the rest",
                            "Annul them: 1st of pool A: Club N; 2nd of pool A: Club S.",
                            "Keep what was played: 1st of pool A: Club E",
                            "Award the rest: 1st of pool A: Club S; 2nd of pool A: Club N.",
                            "This is what the conditions announce.");
            String form = page.body().substring(page.body().indexOf("id=\"part-withdraw\""));
            assertThat(form).doesNotContain(" checked");
            assertThat(served.ledger.event().withdrawals()).isEmpty();
        }
    }

    @Test
    void needs_a_reason_and_a_choice_and_is_then_a_ruling() {
        try (Served served = day()) {
            Guest referee = served.as(Role.REFEREE);
            assertThat(referee.send(PAGE, PAGE, Map.of("treatment", "annul", "by", "R. Referee"))
                            .status())
                    .isEqualTo(422);
            assertThat(referee.send(PAGE, PAGE, Map.of("reason", "the bus", "by", "R. Referee"))
                            .status())
                    .isEqualTo(422);
            assertThat(served.ledger.event().withdrawals()).isEmpty();
            Guest.Got done =
                    referee.send(PAGE, PAGE, Map.of("treatment", "award", "reason", "the bus", "by", "R. Referee"));
            assertThat(done.path()).isEqualTo("/organiser/tables");
            assertThat(served.ledger.event().withdrawals()).containsKey(ClubId.of("E"));
            assertThat(referee.get("/organiser/withdraw/X").status()).isEqualTo(404);
            assertThat(served.as(Role.DESK).get(PAGE).status()).isEqualTo(403);
        }
    }
}
