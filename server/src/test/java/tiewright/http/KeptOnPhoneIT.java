package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** A sheet that stays in the captain's browser: only its receipt is at the desk until it is handed in. */
class KeptOnPhoneIT {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final String PAGE = "/captain/sheet/A1";

    @Test
    void only_the_receipt_goes_to_the_desk_until_the_sheet_is_handed_in() throws IOException {
        Days day = Days.oneTie();
        try (Chromium browser = Chromium.start();
                Served served = Served.empty(Days.moment("09:00"))
                        .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            served.ask(
                    Days.captain("S"), new SealSheet(SHEETS, ClubId.of("S"), Days.straight("S", 4), "cd".repeat(32)));
            browser.at(served.service.url());
            browser.enter(served.link(Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.empty(), "captain"));
            browser.go(PAGE);
            for (int rubber = 1; rubber <= 4; rubber++) {
                for (int seat = 0; seat < 2; seat++) {
                    // the second of a pair first, so that the receipt is made over sorted codes
                    browser.pick("sheet-" + rubber + (seat == 0 ? "-first" : "-second"), "N" + (2 * rubber - seat));
                }
            }
            browser.open("Keep it on this phone, send only the receipt");
            browser.press(PAGE, "Keep it on this phone");

            Exchange.SideOfExchange own = served.ledger.event().exchange(SHEETS).home();
            assertThat(own.isIn()).isTrue();
            assertThat(own.atDesk()).isFalse();
            assertThat(served.ledger.ownSheet(SHEETS, ClubId.of("N")))
                    .as("the desk's machine has no sheet")
                    .isEmpty();
            served.at(Days.moment("09:45"));
            assertThat(served.ledger.event().exchange(SHEETS).isOpened())
                    .as("nothing opens without it")
                    .isFalse();

            toAnotherPhone(browser);
            browser.press(PAGE, "Hand it in now");
            served.service.openWhatIsDue();
            assertThat(served.ledger.event().exchange(SHEETS).isOpened()).isTrue();
            assertThat(served.ledger
                            .event()
                            .exchange(SHEETS)
                            .opened()
                            .orElseThrow()
                            .home())
                    .isEqualTo(Days.straight("N", 4));
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** What was kept goes along behind the # of the address; with another secret it makes another receipt and is not taken. */
    private static void toAnotherPhone(Chromium browser) {
        String brought =
                (String) browser.js("const key = Object.keys(localStorage).find((one) => one.includes(':kept:'));"
                        + " const { secret, names } = JSON.parse(localStorage.getItem(key)); localStorage.clear();"
                        + " return '#' + new URLSearchParams({ secret, ...names })");
        browser.go("/captain");
        browser.go(PAGE + brought.replaceFirst("secret=.", "secret=x"));
        assertThat(browser.js("return document.querySelector('[data-hand-in]').hidden"))
                .isEqualTo(true);
        browser.go("/captain");
        browser.go(PAGE + brought);
        browser.waitUntil("!location.hash && !document.querySelector('[data-hand-in]').hidden");
    }

    /** The service reads no name of a kept sheet, so the page itself asks. */
    @Test
    void somebody_hurt_is_asked_about_before_the_sheet_is_kept() throws IOException {
        try (Chromium browser = Chromium.start();
                Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            served.given(List.of(), List.of(new PrivateNote.HurtMarked(PlayerId.of("N3"), true)));
            browser.at(served.service.url());
            browser.enter(served.link(Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.empty(), "captain"));
            browser.go(PAGE);
            for (int rubber = 1; rubber <= 4; rubber++) {
                browser.pick("sheet-" + rubber + "-first", "N" + (2 * rubber - 1));
                browser.pick("sheet-" + rubber + "-second", "N" + 2 * rubber);
            }
            browser.open("Keep it on this phone, send only the receipt");
            browser.tap("[data-keep]");
            browser.waitFor("[data-kept-note]", "Ask first, tick that you did");
            assertThat(served.ledger.event().exchange(SHEETS).home().isIn()).isFalse();
            browser.tick("hurt-asked", "yes");
            browser.press(PAGE, "Keep it on this phone");
            assertThat(served.ledger.event().exchange(SHEETS).home().isIn()).isTrue();
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
