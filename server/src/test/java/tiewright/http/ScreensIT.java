package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.Role;

/** Pages of the organiser and of the hall are at most three phone screens long with their folds closed. Our own aim, no source. */
class ScreensIT {
    private static final int WIDTH = 390;
    private static final int HEIGHT = 844;

    private Served served;
    private Chromium browser;

    @BeforeEach
    void open() throws IOException {
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        browser = Chromium.start().at(served.service.url());
        browser.phone(WIDTH, HEIGHT);
        browser.enter(served.link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser"));
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
        }
        served.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/organiser /organiser/event /organiser/help /organiser/conditions /organiser/courts /organiser/clubs",
                "/organiser/clubs/paste /organiser/club/KS /organiser/opening /organiser/draw /organiser/knockout",
                "/organiser/private-data /organiser/links /organiser/day-breaks /organiser/day-breaks?what=court",
                "/organiser/withdraw /organiser/withdraw/KS /organiser/rulings /organiser/notices /organiser/backup",
                "/organiser/plan /organiser/times /organiser/budget /organiser/cases /organiser/dry-run /organiser/tables",
                "/log /log?page=2 /desk /desk/check-in /desk/safety /desk/tie/A-2-2 /desk/tie/A-3-1 /desk/clock",
                "/cards /cards/A-2-2 /hurt /protests /organiser/correct/A-2-2/1 /paper",
                "/ /clubs /plan /plan/clubs /ties /tables /bracket /needs /notices /conditions /help/day /board /tie/A-1-1"
            })
    void no_page_is_longer_than_three_screens(String pages) {
        for (String page : pages.split(" ")) {
            browser.go(page);
            Number height = (Number) browser.js("return document.documentElement.scrollHeight");
            assertThat(height.intValue()).as(page).isLessThanOrEqualTo(3 * HEIGHT);
            Number width = (Number) browser.js("return document.documentElement.scrollWidth");
            assertThat(width.intValue()).as(page + " goes sideways").isLessThanOrEqualTo(WIDTH);
        }
    }
}
