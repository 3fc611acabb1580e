package tiewright.http;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.Role;

/**
 * Every page of every role over the demo event, in a real Chromium at the width of a phone and of a laptop: no fault that
 * axe finds by WCAG 2.2 with AAA contrast, no page that scrolls sideways, no complaint in the browser's log, one h1, one way
 * back, and public pages of less than 200 kB with all that they load.
 */
class PagesIT {
    private static final int HEIGHT = 900;
    private static final List<Integer> WIDTHS = List.of(390, 1280);
    private static final long MOST_BYTES = 200_000;
    private static final List<String> PUBLIC = List.of(
            "/",
            "/ties",
            "/plan",
            "/plan/clubs",
            "/board",
            "/tables",
            "/needs",
            "/tables?at=09:30",
            "/bracket",
            "/notices",
            "/clubs",
            "/conditions",
            "/tie/A-1-1",
            "/tie/A-2-2",
            "/tie/A-3-2",
            "/tie/F",
            "/club/KS",
            "/player/KS1",
            "/player/KS1/court",
            "/help/receipts",
            "/paper",
            "/paper/blank-sheets",
            "/paper/blank-cards",
            "/paper/sheets",
            "/paper/cards",
            "/paper/tie/A-1-1",
            "/nowhere");
    private static final List<String> CAPTAIN = List.of(
            "/captain",
            "/captain/squad",
            "/captain/film",
            "/captain/film/note",
            "/captain/film/counts",
            "/captain/film/agreement",
            "/captain/film/find?ending=gave",
            "/captain/rota",
            "/captain/film/note?tie=A-1-1&rubber=1",
            "/captain/past",
            "/captain/playing-time",
            "/captain/sheet/A-3-2",
            "/captain/sheet/A-3-2?from=last",
            "/captain/proposal/A-3-2",
            "/captain/decider/A-2-2",
            "/cards/A-2-2",
            "/cards/A-2-2/D",
            "/tables");
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

    private final SoftAssertions found = new SoftAssertions();
    private Chromium browser;
    private Served served;

    @BeforeEach
    void open() throws IOException {
        browser = Chromium.start();
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        browser.at(served.service.url());
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
            served.close();
        }
    }

    @Test
    void every_public_page() {
        look("everybody", PUBLIC);
        for (String page : PUBLIC) {
            browser.go(page);
            found.assertThat(loaded()).as("bytes of " + page).isBetween(1_000L, MOST_BYTES);
        }
        found.assertAll();
    }

    @Test
    void every_page_of_a_captain() {
        in(Role.CAPTAIN, Optional.of("KS"), Optional.empty(), CAPTAIN);
    }

    @Test
    void every_page_of_a_player() {
        in(Role.PLAYER, Optional.of("KS"), Optional.of("KS1"), List.of("/player/KS1", "/player/KS1/court", "/"));
    }

    @Test
    void every_page_of_a_volunteer() {
        in(Role.VOLUNTEER, Optional.empty(), Optional.empty(), List.of("/cards", "/cards/B-2-1", "/cards/B-2-1/4"));
    }

    @Test
    void every_page_of_the_desk() {
        in(Role.DESK, Optional.empty(), Optional.empty(), DESK);
    }

    @Test
    void every_page_of_the_organiser() {
        in(Role.ORGANISER, Optional.empty(), Optional.empty(), ORGANISER);
    }

    @Test
    void every_page_of_the_organiser_before_anything_is_entered() {
        served.close();
        served = Served.empty(Instant.parse("2026-11-28T10:52:00Z"));
        browser.at(served.service.url());
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

    private void in(Role role, Optional<String> club, Optional<String> player, List<String> pages) {
        browser.enter(served.link(role, club.map(ClubId::of), player.map(PlayerId::of), role.code()));
        look(role.code(), pages);
        found.assertAll();
    }

    private void look(String who, List<String> pages) {
        for (int width : WIDTHS) {
            browser.size(width, HEIGHT);
            for (String page : pages) {
                browser.go(page);
                String where = who + ", " + page + " at " + width + " px";
                found.assertThat(browser.texts("h1"))
                        .as("h1: " + where)
                        .hasSize(1)
                        .noneMatch(String::isBlank);
                found.assertThat(browser.has("nav a[href], .back a[href]"))
                        .as("a way back: " + where)
                        .isTrue();
                found.assertThat(overhang())
                        .as("px beyond the screen: " + where)
                        .isLessThanOrEqualTo(0);
                unrolled(width);
                found.assertThat(browser.faults()).as("axe: " + where).isEmpty();
                browser.size(width, HEIGHT);
                found.assertThat(browser.complaints()).as("log: " + where).isEmpty();
            }
        }
    }

    /** Whole in sight: a bar that stays under the thumb covers by half whatever happens to be scrolled under it. */
    private void unrolled(int width) {
        int tall = ((Number) browser.js("return document.documentElement.scrollHeight")).intValue();
        if (tall > HEIGHT) {
            browser.size(width, tall);
        }
    }

    private long overhang() {
        return ((Number) browser.js(
                        "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .longValue();
    }

    /** Page, styles, scripts, fonts and pictures as they came, by the browser's Resource Timing (W3C). */
    private long loaded() {
        return ((Number) browser.js("return performance.getEntries().filter(e => e.encodedBodySize > 0)"
                        + ".reduce((sum, e) => sum + e.encodedBodySize, 0)"))
                .longValue();
    }
}
