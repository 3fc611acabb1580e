package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Role;

/** What was last seen of today stays readable without a connection and says how old it is; in a real browser. */
class SeenIT {
    private static final String KEPT = "document.getElementById('kept-line')?.textContent";

    private Chromium browser;
    private Served served;

    @BeforeEach
    void open() throws IOException {
        Path profile = Files.createTempDirectory("tiewright-browser");
        browser = Chromium.start(profile);
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        browser.at(served.service.url());
        browser.phone(390, 844);
    }

    @AfterEach
    void close() {
        browser.close();
        served.close();
    }

    private void seen(String path) {
        browser.go(path);
        browser.waitUntil("!document.getElementById('kept-how').hidden");
    }

    private void follow(String path) {
        browser.js("document.querySelector(\"a[href='\" + arguments[0] + \"']\").click()", path);
    }

    @Test
    void a_page_that_was_seen_is_shown_as_it_stood_with_its_age_first() {
        seen("/tables");
        seen("/");
        browser.cut(true);
        follow("/tables");
        browser.waitUntil(KEPT);
        assertThat(browser.title()).isEqualTo("Tables");
        assertThat(browser.path()).isEqualTo("/tables");
        assertThat(browser.texts("#kept-line").get(0)).contains("No connection", "as of 10:52");
        assertThat(browser.has(".columns form")).isFalse();
        assertThat(browser.has(".columns [data-live]"))
                .as("nothing in it moves")
                .isFalse();
        browser.cut(false);
        browser.waitUntil("!document.getElementById('kept-line') && document.querySelector('.columns [data-live]')");
    }

    @Test
    void a_page_that_was_not_seen_says_so_and_the_open_one_stays() {
        seen("/");
        browser.cut(true);
        follow("/tables");
        browser.waitUntil(KEPT);
        assertThat(browser.texts("#kept-line").get(0)).contains("not seen on this phone");
        assertThat(browser.path()).isEqualTo("/");
    }

    @Test
    void where_the_browser_trusts_the_address_it_opens_anew_though_the_desk_is_gone() {
        seen("/tables");
        browser.waitUntil("navigator.serviceWorker.controller");
        seen("/tables");
        served.service.close();
        browser.go("/tables");
        assertThat(browser.title()).isEqualTo("Tables");
        assertThat(browser.texts("#kept-line").get(0)).contains("No connection", "as of 10:52");
        assertThat(browser.has(".columns form")).isFalse();
    }

    @Test
    void who_signs_out_leaves_nothing_of_it_on_the_phone() {
        browser.enter(served.link(Role.CAPTAIN, Optional.of(ClubId.of("KS")), Optional.empty(), "captain"));
        seen("/tables");
        browser.press("/leave", "Sign out");
        seen("/clubs");
        browser.cut(true);
        follow("/tables");
        browser.waitUntil(KEPT);
        assertThat(browser.texts("#kept-line").get(0)).contains("not seen on this phone");
    }

    /** As phones have it in a hall without a certificate: the browser trusts nothing, only an open page helps. */
    @Test
    void over_plain_http_an_open_page_keeps_what_was_seen_and_the_page_says_so() throws IOException {
        try (Listener listener = new Listener();
                Chromium phone = Chromium.by(listener.address())) {
            phone.at(Listener.inTheHall(served.service.url()));
            for (String path : new String[] {"/tables", "/"}) {
                phone.go(path);
                phone.waitUntil("!document.getElementById('kept-how').hidden");
            }
            assertThat(phone.js("return isSecureContext")).isEqualTo(false);
            assertThat(phone.texts("#kept-how").get(0)).contains("do not load the page again");
            phone.cut(true);
            phone.js("document.querySelector(\"a[href='/tables']\").click()");
            phone.waitUntil(KEPT);
            assertThat(phone.title()).isEqualTo("Tables");
            assertThat(phone.texts("#kept-line").get(0)).contains("No connection", "as of 10:52");
        }
    }
}
