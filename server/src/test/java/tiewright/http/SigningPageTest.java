package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.desk.RecordCard;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** What is asked before an official signs, and what the final order then says of itself. */
class SigningPageTest {
    private static final String PAGE = "/organiser/tables";
    private static final String SIGN = PAGE + "/sign/A";

    private static Days oneTie() {
        return Days.oneTie().at("11:00").opened("A1").cards("A1", "11-5", "11-5", "11-5", "5-11");
    }

    @Test
    void a_table_is_signed_inside_the_time_for_objections_only_after_a_question() {
        try (Served served = Served.of(oneTie(), Days.moment("11:00"))) {
            Guest referee = served.as(tiewright.event.Role.REFEREE);
            assertThat(referee.get(PAGE).text()).contains("Captains can object until 11:15.");
            Guest.Got asked = referee.send(PAGE, SIGN, Map.of("sign-A-by", "R. Referee"));
            assertThat(asked.status()).isEqualTo(422);
            assertThat(asked.text()).contains("Captains can object until 11:15. Tick that you sign all the same");
            assertThat(served.ledger.event().signedTables()).isEmpty();
            Map<String, String> sure = Map.of("sign-A-by", "R. Referee", "sign-A-all-the-same", "yes");
            assertThat(referee.send(PAGE, SIGN, sure).status()).isEqualTo(200);
            assertThat(served.ledger.event().signedTables()).containsKey("A");
        }
    }

    @Test
    void nothing_is_asked_once_the_time_for_objections_is_over() {
        try (Served served = Served.of(oneTie(), Days.moment("11:00"))) {
            served.at(Days.moment("11:15"));
            Guest referee = served.as(tiewright.event.Role.REFEREE);
            assertThat(referee.get(PAGE).text()).doesNotContain("sign all the same");
            referee.send(PAGE, SIGN, Map.of("sign-A-by", "R. Referee"));
            assertThat(served.ledger.event().signedTables()).containsKey("A");
        }
    }

    @Test
    void a_signed_table_asks_nobody_to_sign_it_again() {
        try (Served served = Served.of(oneTie(), Days.moment("11:00"))) {
            served.at(Days.moment("11:15"));
            Guest referee = served.as(tiewright.event.Role.REFEREE);
            assertThat(referee.get(PAGE).text()).contains("Sign the table of pool A");
            referee.send(PAGE, SIGN, Map.of("sign-A-by", "R. Referee"));
            assertThat(referee.get(PAGE).text()).contains("R. Referee").doesNotContain("Sign the table of pool A");
        }
    }

    @Test
    void an_open_ruling_is_asked_about_before_the_table_is_signed() {
        Days day = oneTie().player("S9", "S", 9).named("S9", "Player N3");
        try (Served served = Served.of(day, Days.moment("11:00"))) {
            served.at(Days.moment("12:00"));
            Guest referee = served.as(tiewright.event.Role.REFEREE);
            Guest.Got asked = referee.send(PAGE, SIGN, Map.of("sign-A-by", "R. Referee"));
            assertThat(asked.status()).isEqualTo(422);
            assertThat(asked.text()).contains("Tie A1, Club N: a ruling is still to be given.");
            Map<String, String> sure = Map.of("sign-A-by", "R. Referee", "sign-A-all-the-same", "yes");
            referee.send(PAGE, SIGN, sure);
            assertThat(served.ledger.event().signedTables()).containsKey("A");
        }
    }

    private static final String FIRST = "1. Club S: beat Club N 1-0 in tie F. 2. Club N: lost to Club S 0-1 in tie F.";

    private static Days cup() {
        return Days.aDay()
                .with(Setting.RUBBERS, "1")
                .with(Setting.DECIDER, "none")
                .clubs("N", "S")
                .knockoutTie("F", 1, "N", "S")
                .at("15:00")
                .opened("F")
                .does(new RecordCard(TieId.of("F"), RubberNo.of(1), Days.games("9-11"), How.PLAYED));
    }

    @Test
    void the_final_order_is_asked_about_and_then_has_its_reasons_its_minute_its_notice_and_its_text() {
        try (Served served = Served.of(cup(), Days.moment("15:00"))) {
            served.at(Days.moment("15:04"));
            Guest organiser = served.as(tiewright.event.Role.ORGANISER);
            assertThat(organiser.get(PAGE).text()).contains(FIRST);
            Guest.Got asked = organiser.send(PAGE, PAGE + "/event", Map.of("event-by", "Ines"));
            assertThat(asked.text()).contains("Captains can object until");
            organiser.send(PAGE, PAGE + "/event", Map.of("event-by", "Ines", "event-all-the-same", "yes"));
            int number = served.ledger.event().notices().get(0).notice().number();
            String signed = "Signed by Ines at 15:04, notice " + number + ".";
            Guest anybody = served.stranger();
            String tables = anybody.get("/tables").text();
            assertThat(tables).contains(FIRST, signed);
            assertThat(tables.substring(tables.indexOf("The final order as text")))
                    .contains("Final order, Midsummer Cup 1. Club S: beat Club N 1-0 in tie F.", signed);
            assertThat(anybody.get("/notices").text())
                    .contains("The final order of the event", FIRST, "Signed by Ines.");
            assertThat(served.ledger.event().notices()).hasSize(1);
            assertThat(organiser.get(PAGE).text()).contains(FIRST, signed);
        }
    }

    @Test
    void once_it_is_signed_the_front_page_and_the_board_say_who_won_and_that_once() {
        try (Served served = Served.of(cup(), Days.moment("15:00"))) {
            served.at(Days.moment("15:04"));
            served.as(tiewright.event.Role.ORGANISER)
                    .send(PAGE, PAGE + "/event", Map.of("event-by", "Ines", "event-all-the-same", "yes"));
            for (String page : List.of("/", "/board")) {
                assertThat(served.stranger().get(page).text())
                        .as(page)
                        .contains("Club S won Midsummer Cup Club S Club N")
                        .doesNotContain("The final order of the event", "On court now", "free.", "Not signed yet");
            }
        }
    }

    @Test
    void an_order_that_was_signed_before_it_had_a_notice_stands_by_its_names() {
        List<tiewright.event.ClubId> order = List.of(tiewright.event.ClubId.of("S"), tiewright.event.ClubId.of("N"));
        Days day = cup().fact(new tiewright.event.OfficialFact.EventSigned(order, "Ines"));
        try (Served served = Served.of(day, Days.moment("15:04"))) {
            assertThat(served.stranger().get("/tables").text()).contains("1. Club S 2. Club N Signed by Ines.");
        }
    }
}
