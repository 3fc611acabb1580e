package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.PlayFact;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** The page of the plan and of the time budget: what they show, keep, refuse, and that a search holds nobody up. */
class PlanPageTest {
    private static final String PLAN = "/organiser/plan";
    private static final String BUDGET = "/organiser/budget";
    private final Days day = Days.aDay()
            .clubs("A", "B", "C", "D")
            .courts("1", "2", "3", "4")
            .poolTie("P1", "P", 1, "A", "B")
            .poolTie("P2", "P", 1, "C", "D")
            .poolTie("P3", "P", 2, "A", "C")
            .poolTie("P4", "P", 2, "B", "D");
    private final Served served = Served.empty(Days.moment("08:00"))
            .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    private final Guest organiser = served.as(Role.ORGANISER);

    @AfterEach
    void stop() {
        served.close();
    }

    private Guest.Got made(Map<String, String> typed) {
        Guest.Got got = organiser.send(PLAN, PLAN + "/make", typed);
        assertThat(got.status()).as(got.text()).isEqualTo(200);
        served.service.awaitPlans();
        return organiser.get(PLAN);
    }

    @Test
    void a_plan_stands_beside_its_bound_with_its_seed_and_the_reason_of_each_start_and_nothing_is_published() {
        Guest.Got got = made(Map.of("seed", "five owls", "seconds", "2"));
        assertThat(got.text())
                .contains(
                        "A plan that keeps everything that must hold",
                        "No plan can end before",
                        "Search number " + "five owls".hashCode(),
                        "Why at 09:00",
                        "It is in the first slot, 09:00",
                        "nothing yet",
                        "Draft, not published");
        assertThat(got.body()).contains("value=\"" + "five owls".hashCode() + "\"");
        assertThat(served.ledger.event().notices()).isEmpty();
        assertThat(served.ledger.event().order().plans()).isEmpty();
        assertThat(served.stranger().get("/plan").text()).contains("appears here once ties have a start");
    }

    @Test
    void once_the_day_has_begun_what_is_left_is_planned_from_now_on() {
        assertThat(organiser.get(PLAN).body()).containsPattern("name=\"from\"[^>]* value=\"\"");
        served.given(List.of(new PlayFact.CourtCalled(TieId.of("P1"), Optional.of(RubberNo.of(1)), "1")), List.of());
        served.at(Days.moment("10:52"));
        assertThat(organiser.get(PLAN).body()).containsPattern("name=\"from\"[^>]* value=\"10:52\"");
    }

    @Test
    void what_is_pinned_stays_where_it_was_put_until_it_is_unpinned() {
        Guest.Got pinned = organiser.send(
                PLAN, PLAN + "/pin", Map.of("pin-tie", "P1", "pin-start", "11:00", "pin-courts", "3, 4"));
        assertThat(pinned.text()).contains("P1 at 11:00 on 3, 4");
        Guest.Got got = made(Map.of("seconds", "2"));
        assertThat(got.text()).contains("It was put at 11:00 on 3, 4 by hand");
        organiser.send(PLAN, PLAN + "/publish", Map.of("reason", "Speeches first", "by", "Ines"));
        assertThat(served.ledger.event().tie(TieId.of("P1")).orElseThrow().start())
                .contains(LocalTime.of(11, 0));
        assertThat(organiser.send(PLAN, PLAN + "/unpin", Map.of("which", "0")).text())
                .doesNotContain("P1 at 11:00 on 3, 4");
    }

    @Test
    void what_cannot_be_is_said_beside_its_field_and_what_was_typed_is_kept() {
        Guest.Got faulty = organiser.send(
                PLAN,
                PLAN + "/make",
                Map.of("from", "25:00", "slot", "0", "rally-seconds", "fast", "courts-per-tie", "4"));
        assertThat(faulty.status()).isEqualTo(422);
        assertThat(faulty.text())
                .contains("\"25:00\" is not a time", "Write a number from 1 to 240", "\"fast\" is not a number");
        assertThat(faulty.body()).contains("value=\"25:00\"", "value=\"fast\"");
        Guest.Got pin =
                organiser.send(PLAN, PLAN + "/pin", Map.of("pin-tie", "P9", "pin-start", "11:00", "pin-courts", "17"));
        assertThat(pin.status()).isEqualTo(422);
        assertThat(pin.text()).contains("There is no court \"17\"");
        organiser.send(PLAN, PLAN + "/pin", Map.of("pin-tie", "P1", "pin-start", "11:00", "pin-courts", "1"));
        organiser.send(PLAN, PLAN + "/pin", Map.of("pin-tie", "P3", "pin-start", "11:00", "pin-courts", "2"));
        assertThat(made(Map.of("seconds", "1")).text())
                .contains("This cannot be planned", "Club A would be in two ties at once");
    }

    @Test
    void publishing_asks_for_a_reason_and_a_name_and_an_old_search_cannot_be_published() {
        made(Map.of("seconds", "1"));
        Map<String, String> old = organiser.filled(PLAN, PLAN + "/publish", Map.of("reason", "First", "by", "Ines"));
        Guest.Got nameless = organiser.send(PLAN, PLAN + "/publish", Map.of("reason", "", "by", ""));
        assertThat(nameless.status()).isEqualTo(422);
        assertThat(nameless.text()).contains("Write the name of the person who signs");
        made(Map.of("seconds", "1", "seed", "2"));
        assertThat(organiser.post(PLAN + "/publish", old).status()).isEqualTo(422);
        assertThat(served.ledger.event().notices()).isEmpty();
        Guest.Got done = organiser.send(PLAN, PLAN + "/publish", Map.of("reason", "First", "by", "Ines"));
        assertThat(done.path()).isEqualTo("/plan");
        assertThat(done.text())
                .contains("Version 1 of the order of play, notice 1", "order of play 1 of 08:00 (notice 1)");
    }

    @Test
    void the_budget_says_whether_the_day_fits_and_refuses_a_day_that_ends_before_it_begins() {
        Map<String, String> shape = Map.of(
                "clubs", "8", "pools", "2", "knockout", "4", "courts", "6", "starts", "09:00", "closes", "18:00");
        Guest.Got fits = organiser.send(BUDGET, BUDGET, shape);
        assertThat(fits.text())
                .contains(
                        "It fits: ",
                        "of 1000 simulated days",
                        "22 seconds in mixed badminton doubles: about 10.6 of play",
                        "64 rubbers");
        Map<String, String> narrow = new java.util.HashMap<>(shape);
        narrow.put("courts", "1");
        assertThat(organiser.send(BUDGET, BUDGET, narrow).text()).contains("It does not fit: 0 of 1000 simulated days");
        narrow.put("closes", "08:00");
        narrow.put("pools", "7");
        Guest.Got faulty = organiser.send(BUDGET, BUDGET, narrow);
        assertThat(faulty.status()).isEqualTo(422);
        assertThat(faulty.text())
                .contains("The place closes at 08:00, before it starts at 09:00", "8 clubs make at most 4 pools");
        assertThat(faulty.body()).contains("value=\"08:00\"", "value=\"7\"");
    }

    @Test
    void the_budget_asks_first_about_the_event_as_it_is() {
        Days drawn = Days.aDay().clubs("A", "B").poolTie("P1", "P", 1, "A", "B").knockoutTie("F", 1, "A", "B");
        try (Served other = Served.empty(Days.moment("08:00"))
                .given(drawn.facts().stream().map(Recorded::fact).toList(), List.of())) {
            assertThat(FormFields.of(other.as(Role.ORGANISER).get(BUDGET), BUDGET))
                    .containsEntry("clubs", "2")
                    .containsEntry("pools", "1")
                    .containsEntry("knockout", "1");
        }
    }

    @Test
    void the_budget_refuses_pools_that_are_too_large_and_a_day_without_a_tie() {
        Map<String, String> shape = new java.util.HashMap<>(Map.of(
                "clubs", "33", "pools", "2", "knockout", "0", "courts", "6", "starts", "09:00", "closes", "18:00"));
        Guest.Got crowded = organiser.send(BUDGET, BUDGET, shape);
        assertThat(crowded.status()).isEqualTo(422);
        assertThat(crowded.text()).contains("A pool has at most 16 clubs, so 33 clubs need 3 pools");
        shape.put("pools", "0");
        Guest.Got empty = organiser.send(BUDGET, BUDGET, shape);
        assertThat(empty.status()).isEqualTo(422);
        assertThat(empty.text()).contains("Without pools and without a knockout nothing is played");
        shape.put("knockout", "32");
        assertThat(organiser.send(BUDGET, BUDGET, shape).status()).isEqualTo(200);
    }

    @Test
    void a_search_that_goes_on_holds_up_no_page_and_can_be_stopped() {
        Guest.Got going = organiser.send(PLAN, PLAN + "/make", Map.of("seconds", "120"));
        assertThat(going.status()).isEqualTo(200);
        assertThat(served.stranger().get("/").status()).isEqualTo(200);
        organiser.post(PLAN + "/stop", Map.of());
        served.service.awaitPlans();
        assertThat(organiser.get(PLAN).text()).contains("A plan that keeps everything that must hold");
    }
}
