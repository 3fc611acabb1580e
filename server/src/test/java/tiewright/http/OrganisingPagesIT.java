package tiewright.http;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Role;

/** Every page of an organiser's, in the middle of the day and before anything is entered. */
class OrganisingPagesIT extends EachPage {
    private static final List<String> ORGANISER = List.of(
            "/organiser",
            "/organiser/event",
            "/organiser/conditions",
            "/organiser/courts",
            "/organiser/clubs",
            "/organiser/club/KS",
            "/organiser/draw",
            "/organiser/budget",
            "/organiser/plan",
            "/organiser/day-breaks",
            "/organiser/times",
            "/organiser/knockout",
            "/organiser/links",
            "/organiser/rulings",
            "/organiser/tables",
            "/organiser/opening",
            "/organiser/notices",
            "/organiser/backup",
            "/organiser/private-data");

    @Test
    void every_page_of_the_organiser() {
        in(Role.ORGANISER, Optional.empty(), Optional.empty(), ORGANISER);
    }

    @Test
    void every_page_of_the_organiser_before_anything_is_entered() {
        served.close();
        serve(Served.empty(Instant.parse("2026-11-28T10:52:00Z")));
        List<String> pages = new ArrayList<>(ORGANISER);
        pages.remove("/organiser/club/KS");
        pages.addAll(List.of(
                "/",
                "/ties",
                "/tables",
                "/bracket",
                "/clubs",
                "/conditions",
                "/desk",
                "/desk/check-in",
                "/cards",
                "/log",
                "/paper"));
        in(Role.ORGANISER, Optional.empty(), Optional.empty(), pages);
    }
}
