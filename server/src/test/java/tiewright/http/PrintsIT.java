package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
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
    void at_least_four_slips_of_links_stand_on_a_sheet() {
        browser.go("/organiser/links");
        browser.press("/organiser/links/captains", "Make all that are missing");
        int slips = count(".slip");
        assertThat(slips).isGreaterThan(4);
        assertThat(browser.sheetsOfPaper()).isLessThanOrEqualTo((slips + 3) / 4);
    }

    /** How many sheets of paper this part of a pack takes when nothing else is printed. */
    private int alone(int leaf) {
        browser.js(
                "document.querySelectorAll('.leaves > section').forEach((each, i) => {"
                        + " each.hidden = i !== arguments[0]; each.classList.toggle('leaf', !each.hidden); })",
                leaf);
        return browser.sheetsOfPaper();
    }

    @Test
    void a_pack_has_no_empty_sheet_and_two_cards_or_sheets_on_each() {
        for (String pack : List.of("/paper/desk", "/paper/wall", "/paper/envelope/KS")) {
            int all = printed(pack);
            int sum = 0;
            for (int leaf = 0; leaf < count(".leaves > section"); leaf++) {
                int sheets = alone(leaf);
                sum += sheets;
                String here = "section:nth-child(" + (leaf + 1) + ") ";
                int halves = count(here + ".to-sign .rubbers li:nth-child(2)") > 0
                        ? count(here + ".to-sign")
                        : count(here + ".numbered");
                if (halves > 0) {
                    assertThat(sheets).as("two on a sheet: " + pack + here).isEqualTo((halves + 1) / 2);
                }
            }
            assertThat(all).as("no sheet beside those of the parts: " + pack).isEqualTo(sum);
        }
    }

    /** 5 cm for a name and 14 pt on a wall: our own aims. */
    @Test
    void names_have_room_and_what_hangs_on_a_wall_is_read_at_arms_length() {
        browser.go("/paper/desk");
        String lines = "return Math.min(...[...document.querySelectorAll('.to-sign .names .blank, .numbered .side')]"
                + ".map((each) => each.getBoundingClientRect().width)) * 25.4 / 96";
        assertThat(((Number) browser.onPaper(lines)).doubleValue())
                .as("mm for the shortest name")
                .isGreaterThanOrEqualTo(50);
        browser.go("/paper/wall");
        String letters = "return Math.min(...[...document.querySelectorAll('.leaf :is(td, th, caption)')]"
                + ".map((each) => parseFloat(getComputedStyle(each).fontSize))) * 72 / 96";
        assertThat(((Number) browser.onPaper(letters)).doubleValue())
                .as("pt of the smallest letters")
                .isGreaterThanOrEqualTo(14);
        assertThat((boolean) browser.onPaper("return document.documentElement.scrollWidth <= innerWidth"))
                .as("nothing hangs over the edge of the paper")
                .isTrue();
    }

    @Test
    void nothing_that_leads_back_stands_on_paper() {
        for (String page : new String[] {"/paper/desk", "/needs", "/log", "/plan/clubs", "/ties"}) {
            browser.go(page);
            assertThat(browser.printedText()).as(page).doesNotContain("Back to");
        }
    }
}
