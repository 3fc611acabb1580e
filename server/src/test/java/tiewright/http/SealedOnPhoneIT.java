package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.Role;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** A real phone in a hall whose network is listened to: plain http by a name, every byte of it written down. */
class SealedOnPhoneIT {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final ClubId N = ClubId.of("N");
    private static final String PAGE = "/captain/sheet/A1";
    private static final Pattern CODE = Pattern.compile("Player|N[1-8](?![0-9A-Za-z])");
    private static final List<Integer> STRAIGHT = List.of(1, 2, 3, 4, 5, 6, 7, 8);
    private static final List<Integer> CROSSED = List.of(8, 1, 7, 2, 6, 3, 5, 4);

    /** RFC 9180, A.2.1, as in LetterboxTest: the phone's side of the same example. */
    private static final String EXAMPLE = """
            const hex = (digits) => Uint8Array.from(digits.match(/../g) ?? [], (each) => parseInt(each, 16));
            const say = (bytes) => [...bytes].map((each) => each.toString(16).padStart(2, "0")).join("");
            return import("/static/closed.js").then(({ setup }) => {
              const context = setup(hex("4310ee97d88cc1f088a5576c77ab0cf5c3ac797f3d95139c6c84b5429c59662a"),
                hex("4f6465206f6e2061204772656369616e2055726e"),
                hex("f4ec9b33b792c372c1d2c2063507b684ef925b8c75a42dbcbf57d63ccd381600"));
              return [say(context.enc),
                say(context.seal(hex("436f756e742d30"), hex("4265617574792069732074727574682c20747275746820626561757479"))),
                say(context.exported(hex(""), 32)), say(context.exported(hex("54657374436f6e74657874"), 32))].join(" ");
            });
            """;

    @Test
    void the_phone_closes_as_the_published_example_does_where_browsers_have_no_cryptography_of_their_own()
            throws IOException {
        try (Listener listener = new Listener();
                Chromium browser = Chromium.by(listener.address());
                Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            browser.at(Listener.inTheHall(served.service.url()));
            browser.go("/");
            assertThat(browser.js("return isSecureContext || Boolean(crypto.subtle)"))
                    .isEqualTo(false);
            assertThat(browser.js(EXAMPLE))
                    .isEqualTo(String.join(
                            " ",
                            "1afa08d3dec047a643885163f1180476fa7ddb54c6a8029ea33f95796bf2ac4a",
                            "1c5250d8034ec2b784ba2cfd69dbdb8af406cfe3ff938e131f0def8c8b60b4db21993c62ce81883d2dd1b51a28",
                            "4bbd6243b8bb54cec311fac9df81841b6fd61f56538a775e7c80a9f40160606e",
                            "5acb09211139c43b3090489a9da433e8a30ee7188ba8b0a9a1ccf0c229283e53"));
        }
    }

    @Test
    void who_listens_reads_no_name_of_a_sheet_and_hears_the_same_of_another_one() throws IOException {
        try (Listener listener = new Listener();
                Chromium browser = Chromium.by(listener.address())) {
            List<String> one = sealed(listener, browser, STRAIGHT);
            List<String> two = sealed(listener, browser, CROSSED);
            assertThat(two).isEqualTo(one);
        }
    }

    /** What was heard of the pages after sealing, without what is drawn by lot. */
    private static List<String> sealed(Listener listener, Chromium browser, List<Integer> order) throws IOException {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            int before = listener.heard().size();
            browser.at(Listener.inTheHall(served.service.url()));
            browser.enter(Listener.inTheHall(served.link(Role.CAPTAIN, Optional.of(N), Optional.empty(), "captain")));
            browser.go(PAGE);
            browser.waitUntil("!document.getElementById('taps').hidden");
            assertThat(browser.text()).contains("This phone closes the sheet", served.service.fingerprint());
            order.forEach(player -> browser.tap("[data-player=N" + player + "]"));
            browser.waitFor(".why", "Chance to win the tie");
            browser.press(PAGE, "Seal this sheet");
            assertThat(sheet(served)).contains(inOrder(order));
            browser.waitFor("#own-sheet", "The desk's receipt is the one that this phone made.");
            browser.open("Show the names");
            assertThat(browser.texts("#own-sheet .player"))
                    .as("from this phone, which kept them")
                    .containsExactlyElementsOf(
                            order.stream().map(player -> "Player N" + player).toList());
            browser.go("/captain");
            List<Listener.Heard> heard =
                    listener.heard().subList(before, listener.heard().size());
            noName(heard);
            return Stream.of("GET " + PAGE, "GET /captain")
                    .map(what -> heard.stream()
                            .filter(each -> each.what().equals(what))
                            .toList())
                    .map(all -> told(all.get(all.size() - 1)))
                    .toList();
        }
    }

    /** Every request, and that all closed ones and all their answers are alike from outside. */
    private static void noName(List<Listener.Heard> heard) {
        List<Listener.Heard> closed =
                heard.stream().filter(one -> one.request().contains("closed=")).toList();
        assertThat(closed).hasSizeGreaterThanOrEqualTo(2);
        assertThat(closed.stream().map(one -> value(one.request()).length()).distinct())
                .hasSize(1);
        assertThat(closed.stream()
                        .filter(one -> one.isWhole() && one.answer().contains("octet-stream"))
                        .map(one -> one.body().length())
                        .distinct())
                .hasSizeLessThanOrEqualTo(1);
        for (Listener.Heard one : heard) {
            String request = one.request()
                    .replaceAll("(closed|key|seen)=[A-Za-z0-9_-]*", "")
                    .replaceAll("(?i)cookie: .*", "");
            assertThat(CODE.matcher(request).find()).as(request).isFalse();
        }
    }

    private static String value(String request) {
        return request.replaceAll("(?s).*closed=([A-Za-z0-9_-]+).*", "$1");
    }

    private static String told(Listener.Heard one) {
        return one.body()
                .replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", "")
                .replaceAll("data-to=\"[^\"]*\"", "")
                .replaceAll("(http://[a-z0-9.-]+)?:\\d{4,5}", "")
                .replaceAll("[0-9a-f]{64}|([0-9a-f]{4,16} ){3,15}[0-9a-f]{4,16}", "")
                .replaceAll("(?m)^[0-9a-fA-F]+\r?$", "");
    }

    private static Optional<Sheet> sheet(Served served) {
        return served.ledger.ownSheet(SHEETS, N).map(kept -> kept.sheet());
    }

    private static Sheet inOrder(List<Integer> order) {
        return Sheet.of(IntStream.range(0, 4)
                .mapToObj(i -> Optional.of(Pair.of("N" + order.get(2 * i), "N" + order.get(2 * i + 1))))
                .toList());
    }

    @Test
    void a_proposal_is_taken_and_the_club_told_without_a_name_on_the_way_and_another_phone_shows_none()
            throws IOException {
        try (Listener listener = new Listener();
                Chromium browser = Chromium.by(listener.address());
                Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            browser.at(Listener.inTheHall(served.service.url()));
            browser.enter(Listener.inTheHall(served.link(Role.CAPTAIN, Optional.of(N), Optional.empty(), "captain")));
            browser.go("/captain/proposal/A1");
            browser.press(PAGE, "Take this");
            browser.waitUntil("document.querySelectorAll('.seat.full').length === 8");
            assertThat(browser.path()).as("nothing stays in the address").isEqualTo(PAGE);
            browser.press(PAGE, "Seal this sheet");
            assertThat(sheet(served)).isPresent();
            browser.press(PAGE + "/tell", "Let my club see it");
            assertThat(own(served).told()).isTrue();
            noName(listener.heard());
            browser.press(PAGE + "/untell", "Hide it again");

            browser.js("localStorage.clear()");
            browser.go(PAGE);
            browser.waitUntil("!document.getElementById('taps').hidden");
            assertThat(browser.text()).contains("On this network no page shows its names");
            assertThat(browser.texts(".seat.full")).isEmpty();
            browser.tap("#tell button");
            browser.waitFor("#refusal", "Press it on the phone that sealed the sheet");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void an_answer_that_never_came_loses_nothing_and_the_next_press_counts_once() throws IOException {
        try (Listener listener = new Listener();
                Chromium browser = Chromium.by(listener.address());
                Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            browser.at(Listener.inTheHall(served.service.url()));
            browser.enter(Listener.inTheHall(served.link(Role.CAPTAIN, Optional.of(N), Optional.empty(), "captain")));
            browser.go(PAGE);
            browser.waitUntil("!document.getElementById('taps').hidden");
            STRAIGHT.forEach(player -> browser.tap("[data-player=N" + player + "]"));
            browser.js(
                    "window.reached = window.fetch;"
                            + " window.fetch = (...all) => window.reached(...all).then(() => { throw new TypeError('lost'); })");
            browser.tap("[data-seal]");
            browser.waitFor(".why", "It did not reach the desk. All that you chose is still here");
            assertThat(own(served).sealed()).as("though it came").isEqualTo(1);
            browser.js("window.fetch = window.reached");
            browser.press(PAGE, "Seal this sheet");
            assertThat(own(served).sealed()).isEqualTo(1);
            browser.waitFor("#own-sheet", "The desk's receipt is the one that this phone made.");

            served.captain("N").send(PAGE, PAGE, inTheOpen(CROSSED));
            browser.go(PAGE);
            browser.waitFor("#own-sheet .error", "This is not the sheet that this phone sealed last.");
        }
    }

    /** As a form without scripts sends it. */
    private static Map<String, String> inTheOpen(List<Integer> order) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("step", "seal"));
        for (int i = 0; i < order.size(); i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), "N" + order.get(i));
        }
        return fields;
    }

    private static Exchange.SideOfExchange own(Served served) {
        return served.ledger.event().exchange(SHEETS).home();
    }
}
