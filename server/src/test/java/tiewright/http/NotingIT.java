package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** A captain types a game with the keys while the film runs. */
class NotingIT {
    private static final String PAGE = "/captain/film/note";

    @Test
    void a_game_is_typed_key_by_key_and_its_totals_are_exact() throws IOException {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-0");
        try (Chromium browser = Chromium.start();
                Served served = Served.empty(Days.moment("09:00"))
                        .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            browser.at(served.service.url());
            browser.enter(served.link(Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.empty(), "captain"));
            browser.go(PAGE + "?tie=A1&rubber=1");
            browser.tap("#as-text summary");
            // no line breaks are typed: a new rally begins where the last one has ended
            browser.keys("rallies", "aqe2j1n" + "sk3" + "l4o");
            browser.waitFor("#stands", "Next is 3-0-2");
            assertThat(browser.js("return document.getElementById('rallies').value"))
                    .isEqualTo("a q e2 j1 n\ns k3\nl4 o");

            browser.keys("rallies", "j3");
            browser.waitFor("#stands", "Next is 0-3-1");
            browser.keys("rallies", "zz");
            browser.waitFor("#stands", "Next is 3-0-2");

            browser.tap("button[data-key='j']");
            browser.tap("button[data-key='1']");
            browser.waitFor("#stands", "Next is 4-0-2");
            browser.tap(".whose button[data-key='3']");
            browser.tap(".endings button[data-key='k']");
            browser.waitFor("#stands", "Next is 5-0-2");
            browser.tap(".endings button[data-key='z']");
            browser.waitFor("#stands", "Next is 4-0-2");
            assertThat(browser.js("return document.getElementById('score').textContent"))
                    .isEqualTo("4–0");
            browser.js(
                    "const film = document.querySelector('video'); film.hidden = false; film.tabIndex = 0; film.focus();"
                            + " for (const key of 'j1') film.dispatchEvent("
                            + "new KeyboardEvent('keydown', {key, bubbles: true, cancelable: true}))");
            browser.waitFor("#stands", "Next is 5-0-2");
            browser.keys("rallies", " j1 j1 j1 j1 j1 j1");
            browser.waitFor("#stands", "The game is over at 11-0");
            assertThat(browser.texts("#stands tr"))
                    .anySatisfy(row -> assertThat(row).contains("11 of 11"));

            browser.go(PAGE + "?tie=A1&rubber=1");
            browser.waitFor("#stands", "The game is over at 11-0");
            browser.press(PAGE, "Save this game");
            assertThat(browser.text()).contains("Kept: 1 game with 11 decided rallies");
            assertThat(served.ledger.filmsOf(ClubId.of("N"))).hasSize(1);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** Film, score, names and endings stand in the first screen of a phone, above its bar. */
    @Test
    void a_rally_is_noted_without_a_swipe() throws IOException {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-0");
        try (Chromium browser = Chromium.start();
                Served served = Served.empty(Days.moment("09:00"))
                        .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            browser.at(served.service.url());
            browser.phone(390, 844);
            browser.enter(served.link(Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.empty(), "captain"));
            browser.go(PAGE + "?tie=A1&rubber=1");
            browser.tap(".whose button[data-key='1']");
            browser.tap(".endings button[data-key='j']");
            browser.waitFor("#stands", "Next is 1-0-2");
            assertThat(((Number)
                                    browser.js(
                                            "return document.querySelector('.endings button:last-child').getBoundingClientRect().bottom + scrollY"))
                            .doubleValue())
                    .isLessThanOrEqualTo(844 - 64);
            assertThat(((Number) browser.js("return document.documentElement.scrollHeight")).doubleValue())
                    .isLessThanOrEqualTo(3.0 * 844);
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
