package tiewright.http;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Role;

/** Every page of the desk's and a volunteer's. */
class DeskPagesIT extends EachPage {
    private static final List<String> DESK = List.of(
            "/desk",
            "/desk/safety",
            "/desk/check-in",
            "/desk/tie/A-2-2",
            "/desk/tie/A-3-1",
            "/desk/tie/B-2-2",
            "/log",
            "/cards",
            "/cards/B-2-1/1/correct");

    @Test
    void every_page_of_a_volunteer() {
        in(Role.VOLUNTEER, Optional.empty(), Optional.empty(), List.of("/cards", "/cards/B-2-1", "/cards/B-2-1/4"));
    }

    @Test
    void every_page_of_the_desk() {
        in(Role.DESK, Optional.empty(), Optional.empty(), DESK);
    }
}
