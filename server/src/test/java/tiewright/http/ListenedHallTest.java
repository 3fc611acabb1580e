package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ProxySelector;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.letterbox.Phone;
import tiewright.sheet.Receipt;
import tiewright.sheet.SealSheet;

/** Sheets in a hall where somebody listens to all that travels and changes none of it. */
class ListenedHallTest {
    private static final ClubId N = ClubId.of("N");
    private static final TieId TIE = TieId.of("A1");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TIE);
    private static final String PAGE = "/captain/sheet/A1";
    private static final String SECRET = "5e".repeat(32);
    private static final Pattern KEY = Pattern.compile("name=\"key\" value=\"([^\"]+)\"");

    private Listener listener;
    private Served served;
    private Guest captain;

    @BeforeEach
    void inTheHall() throws IOException {
        listener = new Listener();
        served = Served.of(Days.oneTie(), Days.moment("09:00"));
        captain = phone(served, "N");
    }

    @AfterEach
    void close() throws IOException {
        served.close();
        listener.close();
    }

    private Guest phone(Served of, String club) {
        return entered(of, of.link(Role.CAPTAIN, Optional.of(ClubId.of(club)), Optional.empty(), "captain " + club));
    }

    private Guest entered(Served of, String link) {
        Guest guest = new Guest(Listener.inTheHall(of.service.url()), ProxySelector.of(listener.address()));
        guest.get(link.substring(of.service.url().length()));
        return guest;
    }

    /** Pairs of the club's eight, the first of them as given. */
    private static Map<String, String> pairs(String... order) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < order.length; i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), order[i]);
        }
        return fields;
    }

    private static final Map<String, String> STRAIGHT = pairs("N1", "N2", "N3", "N4", "N5", "N6", "N7", "N8");
    private static final Map<String, String> CROSSED = pairs("N1", "N8", "N2", "N7", "N3", "N6", "N4", "N5");

    private static Map<String, String> with(Map<String, String> fields, String... more) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        for (int i = 0; i < more.length; i += 2) {
            all.put(more[i], more[i + 1]);
        }
        return all;
    }

    /** A form of a page, closed as the page's script closes it. */
    private static final class Closing {
        private final Map<String, String> sent;
        private final Phone phone;

        Closing(Guest guest, String page, String action, Map<String, String> fields) {
            Map<String, String> hidden = guest.filled(page, action, Map.of());
            String body = guest.get(page).body();
            this.phone = Phone.closing(
                    attribute(body, "data-to"),
                    String.join("\n", action, hidden.get("key"), attribute(body, "data-bound")),
                    fields);
            this.sent = Map.of("key", hidden.get("key"), "seen", hidden.get("seen"), "closed", phone.closed());
        }

        private static String attribute(String body, String name) {
            Matcher found = Pattern.compile(name + "=\"([^\"]+)\"").matcher(body);
            assertThat(found.find()).as(name).isTrue();
            return found.group(1);
        }
    }

    private Exchange.SideOfExchange own() {
        return served.ledger.event().exchange(SHEETS).home();
    }

    private static Guest.Got seal(Guest guest, Map<String, String> sheet) {
        return guest.post(PAGE, new Closing(guest, PAGE, PAGE, with(sheet, "step", "seal", "secret", SECRET)).sent);
    }

    @Test
    void a_closed_sheet_is_sealed_by_the_secret_of_its_phone() {
        assertThat(seal(captain, CROSSED).status()).isEqualTo(200);
        Decision.Sealed kept = served.ledger.ownSheet(SHEETS, N).orElseThrow();
        assertThat(kept.secret()).isEqualTo(SECRET);
        assertThat(kept.sheet().pairs().values())
                .containsExactly(
                        Optional.of(Pair.of("N1", "N8")),
                        Optional.of(Pair.of("N2", "N7")),
                        Optional.of(Pair.of("N3", "N6")),
                        Optional.of(Pair.of("N4", "N5")));
        assertThat(own().receipt()).contains(Receipt.of(SECRET, TIE, N, kept.sheet()));
        assertThat(captain.get(PAGE).body()).contains(own().receipt().orElseThrow());
    }

    /** Twin days: all that a listener hears of them is alike, but for what is drawn by lot. */
    @Test
    void who_listens_hears_the_same_whatever_was_sealed() throws IOException {
        try (Served twin = Served.of(Days.oneTie(), Days.moment("09:00"));
                Listener other = new Listener()) {
            Listener first = listener;
            List<String> one = journey(captain, STRAIGHT);
            listener = other;
            List<String> two = journey(phone(twin, "N"), CROSSED);
            listener = first;
            assertThat(two).isEqualTo(one);
            assertThat(one).hasSizeGreaterThan(6);
        }
    }

    private List<String> journey(Guest guest, Map<String, String> sheet) {
        for (String page : List.of("/captain", PAGE)) {
            guest.get(page);
        }
        Closing asked = new Closing(guest, PAGE, PAGE, with(sheet, "step", "choose"));
        HttpResponse<byte[]> answer = guest.postForBytes(PAGE, asked.sent);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/octet-stream");
        assertThat(asked.phone.read(answer.body())).contains("selected", sheet.get("sheet-1-second"));
        seal(guest, sheet);
        for (String page : List.of("/captain", PAGE, "/captain/proposal/A1", "/captain/day", "/tie/A1")) {
            assertThat(guest.get(page).status()).as(page).isEqualTo(200);
        }
        return listener.heard().stream()
                .filter(one -> !one.what().contains("/enter/"))
                .map(one -> one.what() + "\n" + told(one))
                .toList();
    }

    /** What was heard, without what is another each time: keys, tokens, cookies, secrets, receipts, ciphertext. */
    private static String told(Listener.Heard one) {
        String request = one.request().replaceAll("(?i)(host|origin|cookie|referer): .*", "");
        String closed = "closed=";
        int at = request.indexOf(closed);
        String body = one.body();
        String answer = one.answer().contains("application/octet-stream") ? "closed " + body.length() : body;
        return (at < 0 ? request : request.replaceAll("closed=[A-Za-z0-9_-]+", "closed " + request.length()))
                        .replaceAll("(key|seen)=[^&\\s]*", "")
                + answer.replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", "")
                        .replaceAll("(?i)(http://[a-z0-9.-]+)?:\\d{4,5}", "")
                        .replaceAll("data-to=\"[^\"]*\"", "")
                        .replaceAll("[0-9a-f]{64}|([0-9a-f]{4,16} ){3,15}[0-9a-f]{4,16}", "")
                        .replaceAll("(?m)^[0-9a-fA-F]+\r?$", "");
    }

    @Test
    void no_page_shows_the_sealed_names_in_the_air_and_the_laptop_does() {
        seal(captain, CROSSED);
        String link = served.link(Role.CAPTAIN, Optional.of(N), Optional.empty(), "laptop");
        assertThat(captain.get(PAGE).text())
                .contains("Your sheet is in", "the phone that sealed it does")
                .contains("This form sends names as they are");
        assertThat(captain.get(PAGE).body()).doesNotContain(" selected");
        assertThat(captain.get("/captain/proposal/A1").text()).doesNotContain("Your sealed sheet");
        Guest laptop = served.stranger();
        laptop.get(link.substring(served.service.url().length()));
        assertThat(laptop.get(PAGE).text())
                .as("a link made later reads it nowhere")
                .doesNotContain("Your sheet is in. On this network");
        Guest own = served.captain("N");
        seal(own, STRAIGHT);
        assertThat(own.get(PAGE).body()).contains(" selected");
        assertThat(own.get(PAGE).text()).doesNotContain("sends names as they are");
        assertThat(own.get("/captain/proposal/A1").text()).contains("Your sealed sheet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "10.0.0.7"})
    void only_the_machine_itself_by_its_own_name_is_not_in_the_air(String host) throws IOException {
        Guest own = served.captain("N");
        seal(own, STRAIGHT);
        String answer = OddRequestsTest.raw(
                served,
                "GET " + PAGE + " HTTP/1.1\nHost: " + host + ":7070\nCookie: " + own.cookie()
                        + "\nConnection: close\n\n");
        assertThat(answer).contains("HTTP/1.1 200");
        assertThat(answer.contains(" selected")).as(host).isEqualTo(!host.startsWith("10."));
    }

    @Test
    void sent_again_by_who_listened_it_counts_once_and_takes_nothing_back() {
        Closing first = new Closing(captain, PAGE, PAGE, with(STRAIGHT, "step", "seal", "secret", SECRET));
        captain.post(PAGE, first.sent);
        captain.post(
                PAGE, new Closing(captain, PAGE, PAGE, with(CROSSED, "step", "seal", "secret", "ab".repeat(32))).sent);
        assertThat(captain.post(PAGE, first.sent).status()).isEqualTo(200);
        assertThat(own().sealed()).isEqualTo(2);
        assertThat(served.ledger.ownSheet(SHEETS, N).orElseThrow().secret()).isEqualTo("ab".repeat(32));
    }

    @Test
    void changed_moved_to_another_address_key_or_link_it_is_not_opened_and_says_so_plainly() {
        Closing mine = new Closing(captain, PAGE, PAGE, with(STRAIGHT, "step", "seal", "secret", SECRET));
        String closed = mine.sent.get("closed");
        String changed = closed.substring(0, 100) + (closed.charAt(100) == 'A' ? 'B' : 'A') + closed.substring(101);
        Guest deputy = entered(served, served.link(Role.CAPTAIN, Optional.of(N), Optional.empty(), "deputy"));
        Guest rival = phone(served, "S");
        Map<String, Guest.Got> tried = new LinkedHashMap<>();
        tried.put("changed", captain.post(PAGE, with(mine.sent, "closed", changed)));
        tried.put("cut", captain.post(PAGE, with(mine.sent, "closed", closed.substring(0, 200))));
        tried.put("key", captain.post(PAGE, with(mine.sent, "key", "another")));
        tried.put("deputy", deputy.post(PAGE, mine.sent));
        tried.put("rival", rival.post(PAGE, mine.sent));
        tried.put("decider", captain.post("/captain/decider/A1", mine.sent));
        tried.put("tell", captain.post(PAGE + "/tell", mine.sent));
        tried.forEach((how, got) -> {
            assertThat(got.status()).as(how).isEqualTo(422);
            assertThat(got.text())
                    .as(how)
                    .contains("The desk could not open what this phone sent", "All that you chose is still here");
            assertThat(got.body()).as(how).doesNotContain(" selected").matches("(?s).*" + KEY + ".*");
        });
        assertThat(own().isIn()).isFalse();
        assertThat(captain.post(PAGE, mine.sent).status()).as("unharmed").isEqualTo(200);
        assertThat(own().isIn()).isTrue();
    }

    @Test
    void the_reasons_of_a_refusal_travel_closed_too() {
        Map<String, String> alone = with(pairs("N1", "N2", "N3"), "step", "seal", "secret", SECRET);
        Closing closing = new Closing(captain, PAGE, PAGE, alone);
        HttpResponse<byte[]> answer = captain.postForBytes(PAGE, closing.sent);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(new String(answer.body(), StandardCharsets.ISO_8859_1)).doesNotContain("player");
        assertThat(closing.phone.read(answer.body()))
                .contains("Rubber 2 has only one player", "name=\"key\"", "<option value=\"N3\" selected");
        assertThat(own().isIn()).isFalse();
        Closing empty = new Closing(captain, PAGE, PAGE, with(STRAIGHT, "step", "seal"));
        captain.postForBytes(PAGE, empty.sent);
        assertThat(own().isIn()).as("without a secret of its own").isFalse();
    }

    @Test
    void without_scripts_it_is_sealed_in_the_open_and_the_page_says_so_before() {
        assertThat(captain.get(PAGE).text())
                .contains("This form sends names as they are: anybody listening on the hall's network can read them.");
        assertThat(captain.send(PAGE, PAGE, with(STRAIGHT, "step", "seal")).status())
                .isEqualTo(200);
        assertThat(own().isIn()).isTrue();
        assertThat(captain.get(PAGE).text()).contains("Yours is in");
        Guest.Got refused = captain.send(PAGE, PAGE, with(pairs("N1", "N2", "N3"), "step", "seal"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).as("nothing typed is lost").contains("<option value=\"N3\" selected");
    }

    /** Who has heard the cookie can press what the captain can: names shown to the club would be shown to the listener. */
    @Test
    void the_club_is_told_in_the_air_by_the_phone_that_sealed_alone() {
        seal(captain, STRAIGHT);
        Guest.Got refused = captain.send(PAGE, PAGE + "/tell", Map.of());
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text())
                .contains("Press it on the phone that sealed the sheet. If that phone is gone, seal again.");
        Guest.Got wrong = captain.post(
                PAGE + "/tell", new Closing(captain, PAGE, PAGE + "/tell", Map.of("secret", "ab".repeat(32))).sent);
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(own().told()).isFalse();
        captain.post(PAGE + "/tell", new Closing(captain, PAGE, PAGE + "/tell", Map.of("secret", SECRET)).sent);
        assertThat(own().told()).isTrue();
        captain.send(PAGE, PAGE + "/untell", Map.of());
        assertThat(own().told()).isFalse();
        served.captain("N").send(PAGE, PAGE + "/tell", Map.of());
        assertThat(own().told()).as("a link made later cannot, wherever it is").isFalse();
    }

    @Test
    void a_sheet_kept_on_the_phone_is_handed_in_closed() {
        Sheet sheet = Days.straight("N", 4);
        captain.send(PAGE, PAGE, Map.of("step", "keep", "receipt", Receipt.of(SECRET, TIE, N, sheet)));
        assertThat(own().atDesk()).isFalse();
        captain.post(PAGE, new Closing(captain, PAGE, PAGE, with(STRAIGHT, "step", "hand-in", "secret", SECRET)).sent);
        assertThat(own().atDesk()).isTrue();
        assertThat(served.ledger.ownSheet(SHEETS, N).orElseThrow().sheet()).isEqualTo(sheet);
    }

    @Test
    void the_pair_for_the_decider_is_closed_in_the_same_way() {
        String page = "/captain/decider/A1";
        served.ask(Days.captain("N"), new SealSheet(SHEETS, N, Days.straight("N", 4), SECRET));
        served.ask(Days.captain("S"), new SealSheet(SHEETS, ClubId.of("S"), Days.straight("S", 4), "cd".repeat(32)));
        served.at(Days.moment("09:45"));
        Closing pair = new Closing(
                captain,
                page,
                page,
                Map.of("step", "seal", "secret", SECRET, "sheet-D-first", "N3", "sheet-D-second", "N5"));
        captain.post(page, pair.sent);
        assertThat(served.ledger
                        .ownSheet(ExchangeId.decider(TIE), N)
                        .orElseThrow()
                        .sheet()
                        .players())
                .containsExactlyInAnyOrder(PlayerId.of("N3"), PlayerId.of("N5"));
        assertThat(captain.get(page).body()).doesNotContain(" selected");
    }

    @Test
    void half_a_key_stops_no_start_and_the_new_one_is_the_one_to_compare() throws IOException {
        String before = served.service.fingerprint();
        Files.write(served.folder.resolve("letterbox.key"), new byte[3]);
        served.restart();
        assertThat(served.service.fingerprint()).isNotEqualTo(before);
        assertThat(served.stranger().get("/trust").text()).contains(served.service.fingerprint());
    }

    @Test
    void the_key_to_compare_stands_on_slips_of_captains_and_on_the_page_of_trust() {
        Guest organiser = served.as(Role.ORGANISER);
        assertThat(organiser.get("/trust").text()).contains(served.service.fingerprint());
        Guest own = served.captain("N");
        Guest.Got slips = own.send(
                "/captain/links", "/captain/links/make", Map.of("role", "captain", "label", "deputy 2", "player", ""));
        assertThat(slips.text()).contains("Key for your sheets: " + served.service.fingerprint());
    }
}
