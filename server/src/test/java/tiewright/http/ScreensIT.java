package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.ClubId;
import tiewright.event.Role;

/**
 * Pages of the organiser and of the hall are at most three phone screens long with their folds closed, and nothing on them has to
 * be pushed sideways. Our own aim, no source.
 */
class ScreensIT {
    private static final int WIDTH = 390;
    private static final int HEIGHT = 844;
    private static final int LAPTOP = 1280;

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

    @Test
    void the_log_is_no_longer_where_its_newest_entries_are_long() {
        for (int link = 1; link <= 12; link++) {
            served.link(
                    Role.CAPTAIN, Optional.of(ClubId.of("KS")), Optional.empty(), "captain of the day, link " + link);
        }
        browser.go("/log");
        Number height = (Number) browser.js("return document.documentElement.scrollHeight");
        assertThat(height.intValue()).isLessThanOrEqualTo(3 * HEIGHT);
    }

    /** What is typed is read with its hyphens: "--" at the end of one line and "copies" on the next is another word. */
    @Test
    void no_line_ends_within_what_is_typed() {
        browser.go("/desk/laptop");
        assertThat(browser.texts(".whole")).contains("--copies", "--data", "my-event");
        assertThat(browser.js(
                        "return [...document.querySelectorAll('.whole')].every(e => e.getClientRects().length == 1)"))
                .isEqualTo(true);
    }

    @Test
    void on_a_laptop_the_line_of_places_marks_one() {
        browser.size(LAPTOP, HEIGHT);
        for (String page : List.of("/organiser", "/organiser/links", "/log", "/tables", "/notices", "/desk/check-in")) {
            browser.go(page);
            assertThat((List<?>) browser.js("return [...document.querySelectorAll('.places a')]"
                            + ".filter(a => a.getClientRects().length && getComputedStyle(a).fontWeight >= 600)"))
                    .as(page)
                    .hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/organiser /organiser/event /organiser/help /organiser/conditions /organiser/courts /organiser/clubs",
                "/organiser/clubs/paste /organiser/club/KS /organiser/opening /organiser/draw /organiser/knockout",
                "/organiser/keep /organiser/keep/player /organiser/links/envelopes /desk/laptop",
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
            assertThat(browser.sideways()).as(page + " with its folds open").isEmpty();
        }
    }
}
