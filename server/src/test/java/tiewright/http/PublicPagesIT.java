package tiewright.http;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Every page of everybody's, each of less than 200 kB with all that it loads; the front page, which most open first, of far less. */
class PublicPagesIT extends EachPage {
    private static final long MOST_BYTES = 200_000;

    /** Our own aim for a phone that has nothing of it yet is 100 kB. */
    private static final long FRONT_PAGE = 80_000;

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

    @Test
    void the_front_page_comes_cold_in_less_than_80_kB() {
        browser.go("/");
        found.assertThat(loaded()).isBetween(30_000L, FRONT_PAGE);
        found.assertAll();
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

    /** Page, styles, scripts, fonts and pictures as they came, by the browser's Resource Timing (W3C). */
    private long loaded() {
        return ((Number) browser.js("return performance.getEntries().filter(e => e.encodedBodySize > 0)"
                        + ".reduce((sum, e) => sum + e.encodedBodySize, 0)"))
                .longValue();
    }
}
