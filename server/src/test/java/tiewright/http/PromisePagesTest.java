package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** A captain promises rubbers to single players, and every page of the captain's that advises knows of it; nobody else's does. */
class PromisePagesTest {
    private static final String DAY = "/captain/day";
    private static final String PROMISE = DAY + "/promise";
    private static final String PROPOSAL = "/captain/proposal/A1";

    private static Days twoTies() {
        return Days.aDay()
                .clubs("N", "S", "W")
                .club("Q", 10)
                .courts("1")
                .poolTie("A1", "A", 1, "Q", "S")
                .poolTie("A2", "A", 2, "Q", "W")
                .timed("A1", "10:00", "1")
                .timed("A2", "12:00", "1");
    }

    private static Served served(Days day) {
        List<PrivateNote> forms = new ArrayList<>();
        for (int player = 1; player <= 10; player++) { // the stronger, the lower the number
            forms.add(new PrivateNote.FormJudged(
                    PlayerId.of("Q" + player), OptionalDouble.of(12 - player), OptionalDouble.of(1)));
        }
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), forms);
    }

    private static Guest.Got promised(Guest captain, String player, String rubbers) {
        return captain.send(DAY, PROMISE, Map.of("promise-player", player, "promise-rubbers", rubbers));
    }

    @Test
    void a_promise_is_kept_changed_and_taken_back_on_the_page_of_the_day() {
        try (Served served = served(twoTies())) {
            Guest captain = served.captain("Q");
            assertThat(captain.get(DAY).text()).contains("nothing yet; a promise shows");
            assertThat(promised(captain, "Q10", "1").text())
                    .contains("promised 1, had 0, missing 1. It can still be kept: the ties ahead can give 2.")
                    .doesNotContain("nothing yet");
            assertThat(promised(captain, "Q10", "3").text())
                    .contains("promised 3, had 0, missing 3. It cannot be kept any more: the ties ahead can give 2.");
            assertThat(captain.get(DAY).body()).contains("take-back-Q10");
            assertThat(promised(captain, "Q10", "0").text()).contains("nothing yet; a promise shows");
            assertThat(served.ledger.privateOf(ClubId.of("Q")).promises()).isEmpty();
        }
    }

    @Test
    void what_is_wrong_is_said_at_its_field_and_what_was_typed_stays() {
        try (Served served = served(twoTies())) {
            Guest captain = served.captain("Q");
            for (String typed : List.of("two", "-1", "100", "1.5", "99999999999")) {
                Guest.Got got = promised(captain, "Q10", typed);
                assertThat(got.status()).as(typed).isEqualTo(422);
                assertThat(got.body())
                        .as(typed)
                        .contains(
                                "id=\"promise-rubbers-error\"",
                                "value=\"" + typed + "\"",
                                "<option value=\"Q10\" selected")
                        .contains("<details class=\"fold\" id=\"promises\" open");
            }
            assertThat(promised(captain, "Q10", "").text()).contains("This must be filled in.");
            for (String player : List.of("S1", "nobody", "", "a,b")) {
                Guest.Got got = promised(captain, player, "2");
                assertThat(got.status()).as(player).isEqualTo(422);
                assertThat(got.body()).as(player).contains("id=\"promise-player-error\"", "value=\"2\"");
            }
            assertThat(served.ledger.privateOf(ClubId.of("Q")).promises()).isEmpty();
            assertThat(served.ledger.privateOf(ClubId.of("S")).promises()).isEmpty();
        }
    }

    @Test
    void the_plan_of_the_day_keeps_it_and_says_when_promises_have_changed_since() {
        try (Served served = served(twoTies())) {
            Guest captain = served.captain("Q");
            promised(captain, "Q10", "1");
            captain.send(DAY, DAY, Map.of("floor", "", "row", "", "learn", ""));
            String text = planned(served, captain);
            assertThat(text)
                    .contains("Everything you asked of the day is kept.")
                    .doesNotContain("promised something else");
            assertThat(text).contains("Promised");
            promised(captain, "Q9", "1");
            assertThat(captain.get(DAY).text()).contains("Your promises have changed since this was planned");
            promised(captain, "Q10", "3");
            captain.send(DAY, DAY, Map.of("floor", "", "row", "", "learn", ""));
            assertThat(planned(served, captain)).contains("rubbers missing by the end: 1.");
        }
    }

    private static String planned(Served served, Guest captain) {
        served.service.awaitPlanOf(ClubId.of("Q"));
        return captain.get(DAY).text();
    }

    @Test
    void a_floor_beyond_all_reason_is_refused_at_its_field() {
        try (Served served = served(twoTies())) {
            Guest captain = served.captain("Q");
            Guest.Got got = captain.send(DAY, DAY, Map.of("floor", "13", "row", "", "learn", ""));
            assertThat(got.status()).isEqualTo(422);
            assertThat(got.body()).contains("id=\"floor-error\"").contains("Write a number from 0 to 12.");
        }
    }

    @Test
    void a_proposal_waits_while_a_later_tie_can_keep_it_and_names_the_price_when_none_can() {
        try (Served served = served(twoTies())) {
            Guest captain = served.captain("Q");
            assertThat(captain.get(PROPOSAL).text()).doesNotContain("What you promised");
            promised(captain, "Q10", "1");
            assertThat(captain.get(PROPOSAL).text())
                    .contains("What you promised", "Nothing that you promised has to be played in this tie")
                    .doesNotContain("leaves your promise");
            promised(captain, "Q10", "2");
            assertThat(captain.get(PROPOSAL).text())
                    .contains(
                            "Due in this tie to",
                            "1 of 2 missing rubbers",
                            "leaves your promise to",
                            "The best sheet that keeps all you promised costs",
                            "The best sheet that keeps what you promised");
            captain.send(PROPOSAL, PROPOSAL + "/wishes", Map.of("player", "Q10", "wish", "rest"));
            assertThat(captain.get(PROPOSAL).text())
                    .contains("These cannot all hold.", "rests.", "is promised 2 rubbers today");
            assertThat(captain.get(DAY).text()).contains("It cannot be kept while you want");
        }
    }

    @Test
    void the_page_of_playing_time_shows_the_promise_beside_what_was_named_but_not_in_the_text_to_copy() {
        Days day = twoTies().opened("A1").card("A1", "1", "11-4");
        try (Served served = served(day)) {
            Guest captain = served.captain("Q");
            assertThat(captain.get("/captain/playing-time").text()).doesNotContain("Promised");
            promised(captain, "Q1", "2");
            assertThat(captain.get(DAY).text())
                    .contains("promised 2, had 1, missing 1. It can still be kept: the ties ahead can give 1.");
            Guest.Got got = captain.get("/captain/playing-time");
            assertThat(got.text()).contains("Promised", "Still missing");
            String copied = got.body().substring(got.body().indexOf("copy-playing-time"));
            assertThat(copied.toLowerCase(java.util.Locale.ROOT)).doesNotContain("promise");
        }
    }

    @Test
    void nobody_else_sees_or_makes_it() {
        try (Served served = served(twoTies())) {
            Guest captain = served.captain("Q");
            promised(captain, "Q10", "2");
            List<Guest> others = List.of(
                    served.stranger(),
                    served.player("Q", "Q10"),
                    served.as(Role.VOLUNTEER),
                    served.as(Role.DESK),
                    served.as(Role.REFEREE),
                    served.as(Role.ORGANISER));
            for (Guest other : others) {
                assertThat(other.get(DAY).status()).isEqualTo(403);
                assertThat(other.post(PROMISE, Map.of("promise-player", "Q10", "promise-rubbers", "5"))
                                .status())
                        .isEqualTo(403);
                for (String page : List.of(
                        "/", "/club/Q", "/player/Q10", "/ties", "/log", "/organiser/club/Q", "/captain/playing-time")) {
                    assertThat(other.get(page).text()).doesNotContain("promised 2", "Still missing");
                }
            }
            Guest rival = served.captain("S");
            assertThat(rival.get(DAY).text())
                    .contains("nothing yet; a promise shows")
                    .doesNotContain("Q10");
            assertThat(rival.post(PROMISE, Map.of("promise-player", "Q10", "promise-rubbers", "5"))
                            .status())
                    .isEqualTo(422);
            assertThat(served.ledger.privateOf(ClubId.of("Q")).promises())
                    .containsOnlyKeys(PlayerId.of("Q10"))
                    .allSatisfy(
                            (player, promise) -> assertThat(promise.rubbers()).isEqualTo(2));
        }
    }
}
