package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.event.Role;

/** What is printed fills whole sheets and wastes none: four cards to a sheet, two line-ups, the order of play on one. Our own aim. */
class PrintsIT {
    private Served served;
    private Chromium browser;

    @BeforeEach
    void open() throws IOException {
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        browser = Chromium.start().at(served.service.url());
        browser.enter(served.link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser"));
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
        }
        served.close();
    }

    private int printed(String page) {
        browser.go(page);
        return browser.sheetsOfPaper();
    }

    private int count(String css) {
        return ((Number) browser.js("return document.querySelectorAll(arguments[0]).length", css)).intValue();
    }

    @Test
    void paper_is_not_wasted() {
        assertThat(printed("/paper/blank-sheets")).isEqualTo(1);
        assertThat(printed("/paper/blank-cards")).isEqualTo(1);
        int cards = printed("/paper/cards");
        assertThat(cards).as("four cards a sheet").isEqualTo((count(".card") + 3) / 4);
        int sheets = printed("/paper/sheets");
        assertThat(sheets).as("two line-ups a sheet").isEqualTo((count(".sheet") + 1) / 2);
        assertThat(printed("/plan")).isEqualTo(1);
        assertThat(printed("/conditions")).isEqualTo(1);
    }

    @Test
    void nothing_that_leads_back_stands_on_paper() {
        for (String page : new String[] {"/needs", "/log", "/plan/clubs", "/ties"}) {
            browser.go(page);
            assertThat(browser.printedText()).as(page).doesNotContain("Back to");
        }
    }
}
