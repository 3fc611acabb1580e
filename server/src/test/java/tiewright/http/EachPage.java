package tiewright.http;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.Role;

/**
 * Pages over the demo event, in a real Chromium at the width of a phone and of a laptop: no fault that axe finds by WCAG 2.2
 * with AAA contrast, no page that scrolls sideways, nothing seen that is marked as hidden, no complaint in the browser's
 * log, one h1, one way back. A class for each kind of people, so that several can be looked at side by side.
 */
abstract class EachPage {
    private static final int HEIGHT = 900;
    private static final List<Integer> WIDTHS = List.of(390, 1280);

    final SoftAssertions found = new SoftAssertions();
    Chromium browser;
    Served served;

    @BeforeEach
    final void open() throws IOException {
        browser = Chromium.start();
        serve(Served.demo(Instant.parse("2026-11-28T10:52:00Z")));
    }

    final void serve(Served other) {
        served = other;
        browser.at(served.service.url());
    }

    @AfterEach
    final void close() {
        if (browser != null) {
            browser.close();
            served.close();
        }
    }

    final void in(Role role, Optional<String> club, Optional<String> player, List<String> pages) {
        browser.enter(served.link(role, club.map(ClubId::of), player.map(PlayerId::of), role.code()));
        look(role.code(), pages);
        found.assertAll();
    }

    final void look(String who, List<String> pages) {
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
                found.assertThat(hiddenButSeen())
                        .as("hidden, but seen: " + where)
                        .isEmpty();
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

    /** What a script shows when it works, and what nobody may press before: a style of its own must not bring it out. */
    private List<?> hiddenButSeen() {
        return (List<?>) browser.js("return [...document.querySelectorAll('[hidden]')]"
                + ".filter(e => e.getClientRects().length > 0).map(e => e.outerHTML.slice(0, 120))");
    }

    private long overhang() {
        return ((Number) browser.js(
                        "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .longValue();
    }
}
