package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** The day on paper by one press: what is in a pack, and what is in none. Our own aims, no source. */
class PackPagesTest {
    private static final String LINK = "/enter/";

    private static int count(String text, String what) {
        return (int)
                Pattern.compile(Pattern.quote(what)).matcher(text).results().count();
    }

    private static Served day() {
        Days day = Days.oneTie();
        int minor = Days.DATE.getYear() - 15;
        return Served.empty(Days.moment("09:00"))
                .given(
                        day.facts().stream().map(Recorded::fact).toList(),
                        List.of(new PersonNamed(PlayerId.of("N1"), "Ines Varley", OptionalInt.of(minor))));
    }

    @Test
    void an_envelope_has_a_sheet_and_a_decider_slip_for_the_tie_ahead_with_a_place_to_sign() {
        try (Served served = day()) {
            String envelope = served.stranger().get("/paper/envelope/N").body();
            assertThat(count(envelope, "Signed by the captain"))
                    .as("sheet and slip")
                    .isEqualTo(2);
            assertThat(envelope)
                    .contains("Tie A1:")
                    .contains("conditions of play")
                    .doesNotContain(LINK);
        }
    }

    @Test
    void a_tie_whose_sheets_are_open_needs_no_sheet_any_more() {
        try (Served served = Served.of(Days.oneTie().opened("A1"), Days.moment("10:00"))) {
            String envelope = served.stranger().get("/paper/envelope/N").body();
            assertThat(count(envelope, "Signed by the captain"))
                    .as("the slip alone")
                    .isEqualTo(1);
        }
    }

    @Test
    void one_press_makes_all_envelopes_with_the_links_that_are_missing_and_shows_them_once() {
        try (Served served = day()) {
            Guest organiser = served.as(Role.ORGANISER);
            Map<String, String> press =
                    organiser.filled("/organiser/links/envelopes", "/organiser/links/envelopes", Map.of());
            String made = organiser.post("/organiser/links/envelopes", press).body();
            int clubs = served.ledger.event().clubs().size();
            assertThat(count(made, "class=\"slip\""))
                    .as("a captain of each club")
                    .isEqualTo(clubs);
            assertThat(made).contains("close the envelope");
            String again = organiser.post("/organiser/links/envelopes", press).body();
            assertThat(again).doesNotContain(LINK);
            String second = organiser
                    .send("/organiser/links/envelopes", "/organiser/links/envelopes", Map.of())
                    .body();
            assertThat(second).contains("Tie A1:").doesNotContain(LINK);
        }
    }

    @Test
    void the_desk_prints_envelopes_without_making_captains_links() {
        try (Served served = day()) {
            Guest desk = served.as(Role.DESK);
            assertThat(desk.get("/paper").body()).contains("/organiser/links/envelopes");
            assertThat(desk.get("/organiser/links/envelopes").body())
                    .doesNotContain("<button class=\"button button-main\"");
        }
    }

    @Test
    void minors_are_short_in_every_pack_whoever_prints_it() {
        try (Served served = day()) {
            for (Role role : List.of(Role.DESK, Role.ORGANISER, Role.REFEREE)) {
                Guest official = served.as(role);
                assertThat(official.get("/paper/desk").body())
                        .contains("Ines V.")
                        .doesNotContain("Varley");
                for (String pack : List.of("/paper/wall", "/paper/envelopes", "/paper/envelope/N")) {
                    assertThat(official.get(pack).body()).doesNotContain("Varley");
                }
            }
        }
    }

    @Test
    void each_card_has_its_number_and_the_way_to_its_own_form() {
        try (Served served = day()) {
            String desk = served.stranger().get("/paper/desk").body();
            assertThat(desk).contains("<b>A1</b>").contains("QR code of the form at /cards/A1");
            assertThat(count(desk, "QR code of the form"))
                    .as("one tie, four to spare")
                    .isEqualTo(5);
        }
    }

    @Test
    void an_event_without_clubs_says_what_comes_first() {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            assertThat(served.stranger().get("/paper/desk").body()).contains("clubs and draw come first");
            assertThat(served.stranger().get("/paper/envelopes").body()).contains("clubs and squads come first");
        }
    }
}
