package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.desk.GiveRuling;
import tiewright.desk.SignTable;
import tiewright.event.Days;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** What only a ruling allows: the desk chooses it from those given, and nobody is told to type a number. */
class ByRulingTest {
    private static final String CARD = "/cards/A1/4/correct";

    private static Served signed() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-5", "11-5", "11-5", "5-11");
        return Served.of(
                day.by(Days.referee()).at("11:30").does(new SignTable("A", "R. Referee")), Days.moment("12:00"));
    }

    private static Map<String, String> typed(String... more) {
        Map<String, String> typed = new LinkedHashMap<>(
                Map.of("home-1", "6", "away-1", "11", "how", "played", "reason", "Misread", "confirmed", "yes"));
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        return typed;
    }

    private static String counts(Served served) {
        return served.ledger
                .event()
                .tie(TieId.of("A1"))
                .orElseThrow()
                .card(RubberNo.of(4))
                .score(RubberNo.of(4))
                .orElseThrow()
                .games()
                .toString();
    }

    @Test
    void a_score_under_a_signed_table_is_put_right_by_choosing_the_ruling() {
        try (Served served = signed()) {
            Guest desk = served.as(Role.DESK);
            String before = counts(served);
            Guest.Got refused = desk.send(CARD, CARD, typed());
            assertThat(refused.text())
                    .contains(
                            "The table of pool A was signed by R. Referee.", "whoever puts the score right chooses it")
                    .doesNotContain("ruling 3", "ruling 1");
            served.ask(
                    Days.referee(), new GiveRuling("A1, rubber 4", "Put the record right.", "Misread", "R. Referee"));
            assertThat(desk.get(CARD).text())
                    .contains("By which ruling, where one is needed", "Ruling 1: A1, rubber 4");
            assertThat(desk.send(CARD, CARD, typed()).status())
                    .as("chosen none")
                    .isEqualTo(422);
            Guest.Got unknown = desk.send(CARD, CARD, typed("by-ruling", "7"));
            assertThat(unknown.status()).isEqualTo(422);
            assertThat(unknown.text()).contains("There is no ruling 7. Choose one of those that were given.");
            assertThat(counts(served)).isEqualTo(before);
            Guest.Got done = desk.send(CARD, CARD, typed("by-ruling", "1"));
            assertThat(done.status()).as(done.text()).isEqualTo(200);
            assertThat(counts(served)).isNotEqualTo(before);
            assertThat(served.as(Role.ORGANISER).get("/log").text()).contains("Misread, ruling 1");
        }
    }

    @Test
    void who_may_rule_is_led_where_the_ruling_is_given_with_the_score_that_was_typed() {
        try (Served served = signed()) {
            Map<String, String> first = typed();
            first.remove("confirmed");
            for (Role role : java.util.List.of(Role.ORGANISER, Role.REFEREE)) {
                Guest.Got led = served.as(role).send(CARD, CARD, first);
                assertThat(led.status()).isEqualTo(200);
                assertThat(led.path()).isEqualTo("/organiser/correct/A1/4");
                assertThat(led.text()).contains("What hangs on this score", "6-11");
            }
        }
    }

    @Test
    void the_ruling_that_was_chosen_goes_along_while_the_card_is_read_back() {
        try (Served served = signed()) {
            served.ask(
                    Days.referee(), new GiveRuling("A1, rubber 4", "Put the record right.", "Misread", "R. Referee"));
            Guest desk = served.as(Role.DESK);
            Map<String, String> first = typed("by-ruling", "1");
            first.remove("confirmed");
            Guest.Got back = desk.send(CARD, CARD, first);
            assertThat(FormFields.of(back, CARD))
                    .containsEntry("by-ruling", "1")
                    .containsEntry("confirmed", "yes");
            assertThat(desk.post(CARD, FormFields.of(back, CARD)).status()).isEqualTo(200);
            assertThat(counts(served)).contains("6");
        }
    }

    @Test
    void a_score_is_taken_back_under_a_signed_table_by_choosing_the_ruling() {
        try (Served served = signed()) {
            served.ask(Days.referee(), new GiveRuling("A1, rubber 4", "Not played.", "Wrong court", "R. Referee"));
            Guest desk = served.as(Role.DESK);
            String page = "/desk/tie/A1";
            Map<String, String> back = new LinkedHashMap<>(
                    Map.of("card-back-rubber", "4", "card-back-reason", "Not played", "by-ruling", ""));
            assertThat(desk.send(page, page + "/card-back", back).status()).isEqualTo(422);
            back.put("by-ruling", "1");
            assertThat(desk.send(page, page + "/card-back", back).status()).isEqualTo(200);
            assertThat(served.ledger
                            .event()
                            .tie(TieId.of("A1"))
                            .orElseThrow()
                            .card(RubberNo.of(4))
                            .score(RubberNo.of(4)))
                    .isEmpty();
        }
    }
}
