package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Card;
import tiewright.event.Days;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Cards through the pages: read back before they count, held when two differ, refused with a sentence, nothing lost. */
class CardEntryTest {
    private static final String RUBBER = "/cards/A1/1";

    private static Served opened() {
        Days day = Days.oneTie().opened("A1");
        return Served.of(day, Days.moment("10:05"));
    }

    private static Map<String, String> score(String home, String away) {
        return new LinkedHashMap<>(Map.of("home-1", home, "away-1", away, "how", "played"));
    }

    private static Guest.Got enter(Guest guest, String home, String away) {
        guest.send(RUBBER, RUBBER, score(home, away));
        Map<String, String> confirmed = guest.filled(RUBBER, RUBBER, score(home, away));
        confirmed.put("confirmed", "yes");
        return guest.post(RUBBER, confirmed);
    }

    private static Card card(Served served) {
        return served.ledger.event().tie(TieId.of("A1")).orElseThrow().card(RubberNo.of(1));
    }

    @Test
    void the_winner_is_read_back_before_anything_counts() {
        try (Served served = opened()) {
            Guest volunteer = served.as(Role.VOLUNTEER);
            Guest.Got echo = volunteer.send(RUBBER, RUBBER, score("7", "11"));
            assertThat(echo.text()).contains("Club S (Player S1 and Player S2) won 11-7.", "Club S 11-7: record");
            assertThat(card(served).standing()).isEqualTo(Card.Standing.EMPTY);
            assertThat(enter(volunteer, "7", "11").path()).isEqualTo("/cards/A1");
            assertThat(card(served).standing()).isEqualTo(Card.Standing.RECORDED);
        }
    }

    @Test
    void an_impossible_score_is_refused_in_a_sentence_and_kept_in_the_fields() {
        try (Served served = opened()) {
            Guest.Got refused = served.as(Role.DESK).send(RUBBER, RUBBER, score("11", "10"));
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.body()).contains("value=\"11\"", "value=\"10\"");
            assertThat(refused.text()).contains("Not done yet");
            assertThat(card(served).standing()).isEqualTo(Card.Standing.EMPTY);
        }
    }

    @Test
    void nonsense_in_the_points_is_refused_beside_its_field() {
        try (Served served = opened()) {
            Guest desk = served.as(Role.DESK);
            for (String nonsense : List.of("", "eleven", "-3", "1e9", "99999999999", "۱۱ ", "<b>11</b>", " ")) {
                Guest.Got refused = desk.send(RUBBER, RUBBER, score(nonsense, "4"));
                assertThat(refused.status())
                        .as("\"" + nonsense + "\": " + refused.text())
                        .isIn(422, 200);
                if (refused.status() == 200) {
                    assertThat(refused.text()).contains("won 11-4");
                }
                assertThat(refused.body()).doesNotContain("<b>11</b>");
            }
            assertThat(card(served).standing()).isEqualTo(Card.Standing.EMPTY);
        }
    }

    @Test
    void two_entries_that_agree_confirm_and_two_that_differ_are_held_for_a_third_person() {
        try (Served served = opened()) {
            enter(served.enter(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "volunteer 1"), "11", "7");
            enter(served.enter(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "volunteer 2"), "11", "7");
            assertThat(card(served).standing()).isEqualTo(Card.Standing.CONFIRMED);
            enter(served.enter(Role.DESK, Optional.empty(), Optional.empty(), "desk 1"), "7", "11");
            assertThat(card(served).standing()).isEqualTo(Card.Standing.HELD);
            assertThat(served.stranger().get("/tie/A1").text()).contains("held: two cards differ");
            Guest referee = served.as(Role.REFEREE);
            Map<String, String> settle = referee.filled(RUBBER + "/correct", RUBBER + "/correct", score("11", "7"));
            settle.put("reason", "The card says 11-7 for the home club.");
            settle.put("confirmed", "yes");
            Guest.Got settled = referee.post(RUBBER + "/correct", settle);
            assertThat(settled.status()).as(settled.text()).isEqualTo(200);
            assertThat(card(served).standing()).isEqualTo(Card.Standing.SETTLED);
            assertThat(referee.get("/cards/A1").text())
                    .contains("volunteer 1", "volunteer 2", "desk 1", "The card says 11-7");
        }
    }

    @Test
    void a_held_card_is_settled_by_choosing_what_the_card_says() {
        try (Served served = opened()) {
            enter(served.as(Role.VOLUNTEER), "11", "7");
            enter(served.as(Role.DESK), "7", "11");
            Guest referee = served.as(Role.REFEREE);
            String page = RUBBER + "/correct";
            assertThat(referee.get(page).text())
                    .contains("Club N won", "Club S won", "Rubbers then: Club N 1, Club S 0.");
            Map<String, String> form = referee.filled(page, page, Map.of("entry", "2", "reason", "Ana Brisk read it."));
            assertThat(referee.post(page, form).status()).isEqualTo(200);
            assertThat(card(served).standing()).isEqualTo(Card.Standing.SETTLED);
            assertThat(card(served).score(RubberNo.of(1)).orElseThrow().winner())
                    .contains(tiewright.event.Side.AWAY);
        }
    }

    @Test
    void whoever_typed_one_of_the_two_reads_before_the_press_that_somebody_else_settles_it() {
        try (Served served = opened()) {
            enter(served.as(Role.VOLUNTEER), "11", "7");
            Guest desk = served.as(Role.DESK);
            enter(desk, "7", "11");
            String page = RUBBER + "/correct";
            assertThat(desk.get(page).text()).contains("one of them came from \"desk\". Somebody else settles it");
            Map<String, String> form = desk.filled(page, page, Map.of("entry", "1", "reason", "I read it."));
            Guest.Got refused = desk.post(page, form);
            assertThat(refused.status()).isEqualTo(422);
            assertThat(card(served).standing()).isEqualTo(Card.Standing.HELD);
        }
    }

    @Test
    void the_log_names_who_sits_at_the_desk_and_each_hand_over_another() {
        try (Served served = opened()) {
            Guest desk = served.as(Role.DESK);
            desk.send("/desk", "/desk/sit", Map.of("sitting", "Sol Idris"));
            enter(desk, "11", "7");
            desk.send("/desk", "/desk/sit", Map.of("sitting", "Mar Tan"));
            assertThat(desk.get("/desk").text()).contains("Mar Tan sits here.");
            enter(desk, "11", "7");
            assertThat(card(served).entries())
                    .extracting(entry -> entry.by().name())
                    .containsExactly("Sol Idris (desk)", "Mar Tan (desk)");
        }
    }

    @Test
    void a_phone_that_sends_three_times_enters_once() {
        try (Served served = opened()) {
            Guest volunteer = served.as(Role.VOLUNTEER);
            Map<String, String> form = volunteer.filled(RUBBER, RUBBER, score("11", "7"));
            form.put("confirmed", "yes");
            for (int i = 0; i < 3; i++) {
                assertThat(volunteer.post(RUBBER, form).status()).isEqualTo(200);
            }
            assertThat(card(served).entries()).hasSize(1);
        }
    }

    @Test
    void a_captain_enters_the_own_tie_only() {
        try (Served served = opened()) {
            assertThat(enter(served.captain("N"), "11", "5").path()).isEqualTo("/tie/A1");
            served.given(
                    List.of(new tiewright.event.SetUpFact.ClubEntered(
                            tiewright.event.ClubId.of("X"), "Club X", Optional.empty(), java.util.OptionalInt.empty())),
                    List.of());
            assertThat(served.captain("X").get(RUBBER).status()).isEqualTo(403);
        }
    }

    @Test
    void a_link_that_was_revoked_is_gone_at_once_and_says_what_to_do() {
        try (Served served = opened()) {
            String link = served.link(Role.DESK, Optional.empty(), Optional.empty(), "desk 9");
            Guest desk = served.stranger();
            desk.get(link.substring(served.service.url().length()));
            assertThat(desk.get("/desk").status()).isEqualTo(200);
            served.given(List.of(new tiewright.event.SetUpFact.LinkRevoked("T1")), List.of());
            assertThat(desk.get("/desk").status()).isEqualTo(403);
            Guest.Got gone =
                    served.stranger().get(link.substring(served.service.url().length()));
            assertThat(gone.status()).isEqualTo(410);
            assertThat(gone.text()).contains("Ask the organiser for a new one");
        }
    }

    /** At 8-6 the home side gives up: USA Pickleball rulebook 2024, 12.F, lifts the other side; other rules count nil or as it stood. */
    @Test
    void a_retirement_says_before_it_counts_how_each_published_way_would_count_it() {
        try (Served served = opened()) {
            Map<String, String> typed = score("8", "6");
            typed.put("how", "retired-home");
            assertThat(served.as(Role.DESK).send(RUBBER, RUBBER, typed).text())
                    .contains(
                            "It counts 8-11, as the conditions say: points kept, the other side lifted.",
                            "Other conditions would count to nil 0-11, as it stood 8-6.",
                            "won 6-8: Club N retired");
        }
    }
}
