package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Role;

/** The page of new links: slips that say for which event they are, and a page that asks for itself no more. */
class MadeLinksTest {
    private static final String LINKS = "/organiser/links";

    @Test
    void every_slip_names_the_event_its_day_and_place() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            String slips = served.as(Role.ORGANISER)
                    .send(LINKS, LINKS + "/captains", Map.of())
                    .body();
            String[] each = slips.split("<li class=\"slip\">");
            assertThat(each).hasSizeGreaterThan(2);
            for (int slip = 1; slip < each.length; slip++) {
                assertThat(each[slip].substring(0, each[slip].indexOf("</li>")))
                        .contains("Midsummer Cup", "20 June 2026", "Long Hall");
            }
        }
    }

    /** The answer to a form stands at an address that may hold no page: it waits for no news. */
    @Test
    void a_page_that_answers_a_form_says_so_and_one_that_was_opened_does_not() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            Guest organiser = served.as(Role.ORGANISER);
            assertThat(organiser.get(LINKS).body()).doesNotContain("data-posted");
            Guest.Got made = organiser.send(LINKS, LINKS + "/captains", Map.of());
            assertThat(made.path()).isEqualTo(LINKS + "/captains");
            assertThat(organiser.get(made.path()).status())
                    .as("no page is there")
                    .isEqualTo(404);
            assertThat(made.body()).contains("data-posted=\"yes\"");
        }
    }

    @Test
    void leads_back_to_where_its_reader_begins() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            assertThat(served.as(Role.DESK).get(LINKS).body()).doesNotContain("href=\"/organiser\"");
            assertThat(served.as(Role.ORGANISER).get(LINKS).body()).contains("href=\"/organiser\"");
        }
    }

    /** The mail's address by RFC 6068, its words by the percent encoding of RFC 3986. */
    @Test
    void one_press_makes_the_link_of_one_club_ready_to_be_sent_and_the_list_then_says_who_has_one() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            Guest organiser = served.as(Role.ORGANISER);
            Guest.Got made = organiser.send(LINKS, LINKS + "/captains", Map.of("club", "N"));
            String slips = made.body();
            assertThat(slips.split("<li class=\"slip\">")).hasSize(2);
            assertThat(slips).contains("href=\"mailto:?subject=Midsummer%20Cup", "%2Fenter%2F");
            Guest.Got list = organiser.get(LINKS);
            assertThat(list.text()).contains("Club N has a link").doesNotContain("Club S has a link");
            assertThat(organiser
                            .send(LINKS, LINKS + "/captains", Map.of("club", "N"))
                            .text())
                    .contains("Everybody asked for has a link already");
        }
    }
}
