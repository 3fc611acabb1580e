package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.correction.CupDay;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.PlayFact;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A swapped score found after the final began, through the pages: read what hangs on it, choose, and see it noted. */
class CorrectionPagesTest {
    private static final String PAGE = "/organiser/correct/A1/1";

    static Served cup() {
        Days day = CupDay.advanced();
        return Served.of(day, Days.moment("13:31"));
    }

    private static Map<String, String> score(String home, String away) {
        return new LinkedHashMap<>(Map.of("home-1", home, "away-1", away, "how", "played"));
    }

    private static Map<String, String> choice(String choice) {
        Map<String, String> typed = score("5", "11");
        typed.putAll(Map.of("form", "choice", "choice", choice, "reason", "The card shows 5-11.", "by", "R. Referee"));
        return typed;
    }

    /** The second form of the page, as it came with the list. */
    private static Map<String, String> decision(Guest guest, String choice) {
        String query = PAGE + "?how=played&home-1=5&away-1=11";
        String body = guest.get(query).body();
        int at = body.indexOf("id=\"part-choice\"");
        assertThat(at).isPositive();
        Map<String, String> fields = new LinkedHashMap<>();
        java.util.regex.Matcher hidden = java.util.regex.Pattern.compile(
                        "<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">")
                .matcher(body.substring(at));
        while (hidden.find()) {
            fields.put(hidden.group(1), hidden.group(2));
        }
        fields.putAll(choice(choice));
        return fields;
    }

    @Test
    void the_list_comes_first_and_changes_nothing() {
        try (Served served = cup()) {
            long before = served.ledger.event().seq();
            Guest referee = served.as(Role.REFEREE);
            Guest.Got list = referee.send(PAGE, PAGE, score("5", "11"));
            assertThat(list.status()).isEqualTo(200);
            assertThat(list.text())
                    .contains(
                            "Tie F, home club Club N Club S played",
                            "Club N, place in the pool 1 2 played",
                            "Tie P3, sheet of Club S sealed nothing nobody has acted on it",
                            "Let it stand by ruling",
                            "Play again from here",
                            "Begin again: tie F, tie P3. 1 sealed sheet goes back unseen.",
                            "Correct the record only");
            assertThat(list.body()).doesNotContain("1".repeat(20));
            assertThat(served.ledger.event().seq()).as("only the link was made").isEqualTo(before + 1);
        }
    }

    @Test
    void playing_again_is_noted_shown_to_everybody_and_leaves_the_past_readable() {
        try (Served served = cup()) {
            Guest referee = served.as(Role.REFEREE);
            served.clock.pass(java.time.Duration.ofMinutes(2));
            Guest.Got done = referee.post(PAGE, decision(referee, "replay"));
            assertThat(done.path()).as(done.text()).isEqualTo("/notices");
            assertThat(done.text())
                    .contains("Score of tie A1, rubber 1", "Begin again: tie F, P3", "The card shows 5-11.");
            Guest anybody = served.stranger();
            assertThat(anybody.get("/bracket").text()).contains("Club S");
            assertThat(anybody.get("/tie/F").text()).contains("Club S v Club E").doesNotContain("11-3");
            assertThat(anybody.get("/tables").text()).contains("Final, by R. Referee");
            assertThat(anybody.get("/tables?at=13:30").text()).contains("As it stood at 13:30");
            assertThat(referee.get("/log").text())
                    .contains("begins again, Club S v Club E", "settled as 5-11: The card shows 5-11.");
        }
    }

    @Test
    void sending_twice_or_deciding_again_changes_nothing_more() {
        try (Served served = cup()) {
            Guest referee = served.as(Role.REFEREE);
            Map<String, String> form = decision(referee, "let-stand");
            assertThat(referee.post(PAGE, form).path()).isEqualTo("/notices");
            long after = served.ledger.event().seq();
            assertThat(referee.post(PAGE, form).path()).isEqualTo("/notices");
            Guest.Got again = referee.post(PAGE, decision(referee, "let-stand"));
            assertThat(again.status()).isEqualTo(422);
            assertThat(again.text()).contains("Ruling 1 decided this already. Nothing more was changed.");
            assertThat(served.ledger.event().seq()).isEqualTo(after);
        }
    }

    @Test
    void of_two_officials_the_second_is_told_what_the_first_decided() {
        try (Served served = cup()) {
            Guest referee = served.as(Role.REFEREE);
            Guest organiser = served.as(Role.ORGANISER);
            Map<String, String> second = decision(organiser, "record-only");
            referee.post(PAGE, decision(referee, "replay"));
            long after = served.ledger.event().seq();
            Guest.Got told = organiser.post(PAGE, second);
            assertThat(told.status()).isEqualTo(409);
            assertThat(told.text())
                    .contains(
                            "Something changed while you were writing",
                            "Entered since you opened this page",
                            "Ruling 1: tie A1, rubber 1, counts 5-11");
            assertThat(served.ledger.event().seq()).isEqualTo(after);
        }
    }

    @Test
    void what_came_into_the_next_tie_meanwhile_is_told_before_anything_is_decided() {
        try (Served served = cup()) {
            Guest referee = served.as(Role.REFEREE);
            Map<String, String> form = decision(referee, "replay");
            served.given(
                    List.of(new PlayFact.CardEntered(
                            TieId.of("F"), RubberNo.of(2), Days.games("11-9"), tiewright.event.How.PLAYED)),
                    List.of());
            Guest.Got told = referee.post(PAGE, form);
            assertThat(told.status()).isEqualTo(422);
            assertThat(told.text()).contains("Read the new list", "Card of tie F, rubber 2: 11-9.");
            assertThat(served.ledger
                            .event()
                            .tie(TieId.of("F"))
                            .orElseThrow()
                            .home()
                            .club())
                    .contains(ClubId.of("N"));
        }
    }

    @Test
    void a_plain_correction_of_a_score_that_others_built_on_leads_to_the_list() {
        try (Served served = cup()) {
            Guest referee = served.as(Role.REFEREE);
            Map<String, String> typed = score("5", "11");
            typed.put("reason", "swapped");
            Guest.Got list = referee.send("/cards/A1/1/correct", "/cards/A1/1/correct", typed);
            assertThat(list.path()).isEqualTo(PAGE);
            assertThat(list.text()).contains("Play again from here");
            Guest.Got desk = served.as(Role.DESK).send("/cards/A1/1/correct", "/cards/A1/1/correct", typed);
            assertThat(desk.status()).isEqualTo(422);
            assertThat(desk.text()).contains("The organiser or the referee gives a ruling first");
        }
    }

    @Test
    void is_for_those_who_rule_and_refuses_in_sentences() {
        try (Served served = cup()) {
            for (Role role : List.of(Role.DESK, Role.VOLUNTEER)) {
                assertThat(served.enter(role, Optional.empty(), Optional.empty(), "x")
                                .get(PAGE)
                                .status())
                        .isEqualTo(403);
            }
            assertThat(served.captain("N").get(PAGE).status()).isEqualTo(403);
            assertThat(served.stranger().get(PAGE).status()).isEqualTo(403);
            Guest referee = served.as(Role.REFEREE);
            Map<String, String> form = decision(referee, "replay");
            form.put("reason", "");
            assertThat(referee.post(PAGE, form).status()).isEqualTo(422);
            assertThat(referee.send("/organiser/correct/P3/1", "/organiser/correct/P3/1", score("5", "11"))
                            .text())
                    .contains("was never played");
            assertThat(referee.send(PAGE, PAGE, score("5", "10")).status()).isEqualTo(422);
            assertThat(referee.get("/organiser/correct/A1/99").status()).isEqualTo(404);
            assertThat(referee.get("/organiser/correct/Z/1").status()).isEqualTo(404);
        }
    }
}
