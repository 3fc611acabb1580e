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
import org.openqa.selenium.WebDriverException;
import tiewright.event.Card;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/** What is typed in a hall without wifi stays on the phone and reaches the desk, each once; over plain http, in a real browser. */
class OutboxIT {
    private static final TieId TIE = TieId.of("B-2-1");
    private static final RubberNo RUBBER = RubberNo.of(3);
    private static final String CARD = "/cards/B-2-1/3";
    private static final String WAITING = "!document.getElementById('outbox').hidden";
    private static final String NONE_LEFT =
            "document.getElementById('outbox') && document.querySelectorAll('#outbox li').length === 0";

    private Path profile;
    private Chromium browser;
    private Served served;
    private String link;

    @BeforeEach
    void open() throws IOException {
        profile = Files.createTempDirectory("tiewright-browser");
        browser = Chromium.start(profile);
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        browser.at(served.service.url());
        browser.phone(390, 844);
        link = served.link(Role.DESK, Optional.empty(), Optional.empty(), "desk");
        browser.enter(link);
    }

    @AfterEach
    void close() {
        browser.close();
        served.close();
    }

    private Tie tie() {
        return served.ledger.event().tie(TIE).orElseThrow();
    }

    /** As the desk's phone does it: who won, the loser's points, one press. */
    private void record() {
        browser.tap(".side[data-side=away]");
        browser.tap("[data-lost='6']");
        browser.tap(".card-form .button-main");
    }

    private void typedWithoutWifi() {
        browser.go(CARD);
        browser.cut(true);
        record();
        browser.waitUntil(WAITING);
        assertThat(browser.texts("#outbox h2")).containsExactly("Not at the desk yet: 1");
        assertThat(browser.texts("#outbox li b").get(0)).contains("11-6");
        assertThat(tie().card(RUBBER).standing()).isEqualTo(Card.Standing.EMPTY);
    }

    private void itCameOnce() {
        browser.waitUntil(NONE_LEFT);
        assertThat(tie().card(RUBBER).score(RUBBER).orElseThrow().games()).containsExactly(Score.of(6, 11));
        assertThat(tie().card(RUBBER).entries()).hasSize(1);
    }

    @Test
    void a_score_typed_without_wifi_waits_on_the_phone_and_goes_by_itself() {
        typedWithoutWifi();
        browser.cut(false);
        itCameOnce();
        assertThat(browser.texts("#outbox [role=status]")).containsExactly("Arrived at the desk: 1");
    }

    @Test
    void it_survives_a_reload_that_shows_the_browsers_own_error() {
        typedWithoutWifi();
        try {
            browser.go(CARD);
        } catch (WebDriverException noConnection) {
            assertThat(noConnection).hasMessageContaining("ERR_INTERNET_DISCONNECTED");
        }
        browser.cut(false);
        browser.go("/desk");
        itCameOnce();
    }

    @Test
    void it_survives_a_browser_that_is_killed() throws IOException {
        typedWithoutWifi();
        Chromium.kill(profile);
        browser.close();
        browser = Chromium.start(profile).at(served.service.url());
        browser.go(link); // what it remembered of who one is may have gone with it
        itCameOnce();
    }

    @Test
    void what_the_desk_does_not_take_stays_with_its_reason_until_a_person_takes_it_off() {
        browser.go(CARD);
        browser.cut(true);
        browser.js(
                "const [home, away] = document.querySelectorAll('.two-sides input'); home.value = 5; away.value = 3;");
        browser.tap(".card-form .button-main");
        browser.waitUntil(WAITING);
        browser.cut(false);
        browser.waitUntil("document.querySelector('#outbox .reason')?.textContent");
        assertThat(browser.texts("#outbox li .reason").get(0)).contains("5-3");
        assertThat(tie().card(RUBBER).standing()).isEqualTo(Card.Standing.EMPTY);
        browser.tap("#outbox li a");
        browser.waitUntil("location.pathname === '" + CARD + "' && " + WAITING);
        browser.tap("#outbox li button");
        assertThat(browser.texts("#outbox li button")).containsExactly("Press again to delete it for good");
        browser.tap("#outbox li button");
        browser.waitUntil(NONE_LEFT);
    }

    @Test
    void what_one_person_typed_is_not_sent_as_another() {
        typedWithoutWifi();
        browser.go("about:blank"); // nothing of the first person's page goes on
        browser.cut(false);
        browser.enter(served.link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser"));
        browser.go("/desk");
        browser.waitUntil(WAITING);
        assertThat(browser.texts("#outbox li .reason").get(0)).contains("desk");
        assertThat(tie().card(RUBBER).standing()).isEqualTo(Card.Standing.EMPTY);
    }

    @Test
    void with_a_connection_a_score_goes_as_ever() {
        browser.go(CARD);
        record();
        browser.waitUntil("!document.querySelector('.card-form')");
        itCameOnce();
        assertThat(browser.complaints()).isEmpty();
    }
}
