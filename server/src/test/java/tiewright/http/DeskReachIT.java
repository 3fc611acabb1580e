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
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.desk.CallToCourt;
import tiewright.desk.RecordCard;
import tiewright.event.Actor;
import tiewright.event.Card;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.Player;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/**
 * How far the hand of the desk has to reach, counted in presses from its first page and in pixels of the first screen, over
 * the demo event in a real Chromium. Our own measure, no source.
 */
class DeskReachIT {
    private static final TieId TIE = TieId.of("B-2-1");
    private static final RubberNo RUBBER = RubberNo.of(3);
    private static final List<String> CLUBS = List.of("A", "B", "C", "D", "E", "F", "G", "H");

    private Chromium browser;
    private Served served;
    private int presses;

    @BeforeEach
    void open() throws IOException {
        browser = Chromium.start();
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        browser.at(served.service.url());
        screen(390, 844);
        in(Role.DESK);
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
            served.close();
        }
    }

    /** A screen of which the page itself has so many pixels. */
    private void screen(int width, int height) {
        browser.size(width, height);
        Number bars = (Number) browser.js("return outerHeight - innerHeight");
        browser.size(width, height + bars.intValue());
    }

    private void in(Role role) {
        browser.enter(served.link(role, Optional.empty(), Optional.empty(), role.code()));
        presses = 0;
    }

    private void press(String css) {
        presses++;
        browser.tap(css);
        browser.js("return 0");
    }

    private Tie tie() {
        return served.ledger.event().tie(TIE).orElseThrow();
    }

    private void called() {
        served.ask(Actor.of(Role.DESK, "test"), new CallToCourt(TIE, RUBBER, "4"));
        browser.go("/desk");
    }

    /** The last pixel of the first screen on which it can be seen: what lies under the thumb covers the rest. */
    private void isOnTheFirstScreen(String css) {
        Number bottom = (Number) browser.js(
                "window.scrollTo(0, 0); return document.querySelector(arguments[0]).getBoundingClientRect().bottom"
                        + " - (innerHeight - (getComputedStyle(document.querySelector('.places')).position === 'fixed'"
                        + " ? document.querySelector('.places').offsetHeight : 0))",
                css);
        assertThat(bottom.doubleValue())
                .as("px of " + css + " below the first screen")
                .isLessThanOrEqualTo(0);
    }

    @Test
    void a_rubber_is_called_in_one_press() {
        press("form[action='/desk/tie/B-2-1/call'] button");
        browser.waitFor(".spot-on .how", "on for 0 min");
        assertThat(tie().calls()).containsKey(RUBBER);
        assertThat(presses).isEqualTo(1);
    }

    @Test
    void a_score_is_entered_in_three_presses_and_its_digit() {
        called();
        press(".spot a[href='/cards/B-2-1/3']");
        browser.latency(2000);
        press(".side[data-side=away]");
        press("[data-lost='6']");
        assertThat(browser.texts(".card-form .echo").get(0))
                .isEqualTo("Gannet Row won rubber 3, 11-6. Rubbers then: Thornacre Green 1, Gannet Row 3.");
        press(".card-form .button-main");
        browser.waitFor(".spot .how", "to be called");
        assertThat(tie().card(RUBBER).score(RUBBER).orElseThrow().games()).containsExactly(Score.of(6, 11));
        assertThat(presses).isEqualTo(3 + 1);
    }

    @Test
    void a_laptop_enters_it_by_numbers_enter_enter() {
        screen(1280, 900);
        called();
        browser.go("/cards/B-2-1/3");
        assertThat(browser.js("return document.activeElement.id")).isEqualTo("home-1");
        browser.keys("home-1", "11\n");
        assertThat(browser.js("return document.activeElement.id")).isEqualTo("away-1");
        browser.keys("away-1", "13\n");
        assertThat(browser.js("return document.activeElement.textContent")).isEqualTo("Gannet Row 13-11: record");
        browser.keysHere("\n");
        browser.waitFor(".spot .how", "to be called");
        assertThat(tie().card(RUBBER).score(RUBBER).orElseThrow().games()).containsExactly(Score.of(11, 13));
    }

    @Test
    void a_score_that_ends_no_game_is_asked_of_the_service_which_says_why() {
        called();
        browser.go("/cards/B-2-1/3");
        browser.set("home-1", "11");
        browser.set("away-1", "10");
        assertThat(browser.texts(".card-form .button-main")).containsExactly("Read it back to me");
        press(".card-form .button-main");
        browser.waitFor("#refusal li", "11");
        assertThat(tie().card(RUBBER).standing()).isEqualTo(Card.Standing.EMPTY);
    }

    @Test
    void a_held_card_is_settled_in_three_presses() {
        called();
        for (int home : new int[] {11, 8}) {
            served.ask(
                    Actor.of(Role.VOLUNTEER, "volunteer " + home),
                    new RecordCard(TIE, RUBBER, List.of(Score.of(home, 19 - home)), How.PLAYED));
        }
        assertThat(tie().card(RUBBER).standing()).isEqualTo(Card.Standing.HELD);
        browser.go("/desk");
        press(".spot-held .go a");
        isOnTheFirstScreen(".settle .button-main");
        press(".reading input[value='2']");
        press(".settle .button-main");
        browser.waitFor(".spot .how", "to be called");
        assertThat(tie().card(RUBBER).standing()).isEqualTo(Card.Standing.SETTLED);
        assertThat(tie().card(RUBBER).score(RUBBER).orElseThrow().games()).containsExactly(Score.of(8, 11));
        assertThat(presses).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"390, 844", "1280, 900"})
    void which_sheets_are_missing_and_every_court_stand_on_the_first_screen(int width, int height) {
        screen(width, height);
        browser.go("/desk");
        isOnTheFirstScreen(width < 700 ? ".sheets-due:last-of-type" : "#sheets h2:last-of-type");
        isOnTheFirstScreen(".spot:last-child");
        assertThat(browser.text()).contains("Sheets: they open together at 11:15.", "of 8 are in.");
    }

    @ParameterizedTest
    @CsvSource({"390, 844", "1280, 900"})
    void the_main_press_of_a_card_lies_on_the_first_screen(int width, int height) {
        screen(width, height);
        called();
        browser.go("/cards/B-2-1/3");
        isOnTheFirstScreen(".card-form .button-main");
    }

    @Test
    void eight_clubs_check_in_with_ten_presses() {
        served.close();
        Days day = Days.aDay().clubs(CLUBS.toArray(String[]::new));
        served = Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
        browser.at(served.service.url());
        in(Role.DESK);
        browser.go("/desk/check-in");
        for (int club = 1; club <= CLUBS.size(); club++) {
            press("form[action='/desk/check-in/club'] button");
            browser.waitFor("main p", 8 * club + " of 64 here");
        }
        press("#B3 button");
        browser.waitFor("main p", "63 of 64 here");
        press("#F1 button");
        browser.waitFor("main p", "62 of 64 here");
        assertThat(served.ledger.event().players().values().stream().filter(Player::absent))
                .extracting(player -> player.id().code())
                .containsExactly("B3", "F1");
        assertThat(presses).isEqualTo(10);
    }
}
