package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import tiewright.desk.PostNotice;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.TieId;

/** Requests that no page of ours makes, and forms that come out of order: an answer in plain words, and nothing broken. */
class OddRequestsTest {
    private static final String FORM = "application/x-www-form-urlencoded";

    private static Served oneTie() {
        Days day = Days.oneTie();
        return Served.of(day, Days.moment("09:00"));
    }

    private static Map<String, String> sheet(String club, int first) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("step", "seal"));
        for (int i = 0; i < 8; i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), club + ((i + first - 1) % 8 + 1));
        }
        return fields;
    }

    private static String cookied(Served served, String cookie) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(served.service.url() + "/"))
                .header("Cookie", cookie)
                .build();
        HttpResponse<String> answer = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
        return answer.statusCode() + " " + answer.body();
    }

    private static String cookieName(Served served) {
        return served.as(Role.DESK).cookie().split("=", 2)[0];
    }

    @Test
    void a_forged_cookie_makes_a_stranger_whatever_its_length() throws Exception {
        try (Served served = oneTie()) {
            for (int length = 0; length <= 60; length++) {
                assertThat(cookied(served, cookieName(served) + "=" + "A".repeat(length)))
                        .startsWith("200")
                        .doesNotContain("You are here as");
            }
        }
    }

    @Test
    void a_forged_mark_of_what_was_seen_is_no_failure() {
        try (Served served = oneTie()) {
            Guest desk = served.as(Role.DESK);
            int player = 0;
            for (String seen : List.of("99999999999999999999", "AAAA", "%", "", "A".repeat(500))) {
                assertThat(desk.post("/desk/check-in", Map.of("player", "N" + ++player, "present", "yes", "seen", seen))
                                .status())
                        .isEqualTo(200);
            }
        }
    }

    /** RFC 9110, 9.3.2. */
    @Test
    void who_asks_only_for_the_head_of_a_page_gets_the_same_answer_without_the_page() {
        try (Served served = oneTie()) {
            Guest stranger = served.stranger();
            Guest captain = served.captain("N");
            for (String page : List.of(
                    "/",
                    "/ties",
                    "/tables",
                    "/captain",
                    "/captain/squad",
                    "/desk",
                    "/log",
                    "/organiser",
                    "/tie/A1",
                    "/tie/none",
                    "/nowhere")) {
                assertThat(stranger.head(page).status())
                        .as(page)
                        .isEqualTo(stranger.get(page).status());
                assertThat(captain.head(page).status())
                        .as(page)
                        .isEqualTo(captain.get(page).status());
                assertThat(captain.head(page).body()).isEmpty();
            }
            assertThat(stranger.head("/captain").status()).isEqualTo(403);
        }
    }

    @Test
    void an_origin_that_is_no_address_is_another_site() {
        try (Served served = oneTie()) {
            Guest desk = served.as(Role.DESK);
            for (String origin :
                    List.of("http://[bad", "%%%", "file://", served.service.url() + ".elsewhere.example")) {
                assertThat(desk.postFrom(origin, "/desk/check-in", Map.of("player", "N1", "present", "yes"))
                                .status())
                        .as(origin)
                        .isEqualTo(403);
            }
            assertThat(desk.get("/desk/check-in").text()).contains("0 of 8 here");
        }
    }

    @Test
    void a_form_in_parts_or_too_long_is_refused_in_words() {
        try (Served served = oneTie()) {
            Guest desk = served.as(Role.DESK);
            Guest.Got parts =
                    desk.raw("/desk/check-in", "garbage", Map.of("Content-Type", "multipart/form-data; boundary=x"));
            assertThat(parts.status()).isEqualTo(403);
            Guest.Got huge =
                    desk.raw("/desk/check-in", "player=" + "a".repeat(1_200_000), Map.of("Content-Type", FORM));
            assertThat(huge.status()).isEqualTo(413);
            assertThat(huge.text()).contains("more than the service takes", "What is on now");
        }
    }

    @Test
    void an_address_without_a_page_says_so_and_blames_no_form() {
        try (Served served = oneTie()) {
            for (String path : List.of("/nosuch", "/organiser/links/captains", "/desk/tie/A1/call")) {
                Guest.Got missing = served.stranger().get(path);
                assertThat(missing.status()).as(path).isIn(404, 405);
                assertThat(missing.text())
                        .as(path)
                        .contains("There is no page at this address.")
                        .doesNotContain("cannot read what was sent");
            }
        }
    }

    @Test
    void there_is_no_card_for_a_rubber_that_the_tie_does_not_have() {
        try (Served served = oneTie()) {
            Guest desk = served.as(Role.DESK);
            assertThat(desk.get("/cards/A1/4").status()).isEqualTo(200);
            assertThat(desk.get("/cards/A1/5").status()).isEqualTo(404);
            assertThat(desk.get("/cards/A1/99").status()).isEqualTo(404);
        }
    }

    @Test
    void a_time_zone_that_is_none_is_told_beside_its_field() {
        try (Served served = oneTie()) {
            Guest organiser = served.as(Role.ORGANISER);
            for (String zone : List.of("2", "<script>", "../../etc", "Nowhere/Else", "\u202eabc")) {
                Guest.Got got = organiser.post(
                        "/organiser/event",
                        Map.of(
                                "form",
                                "event",
                                "name",
                                "Day",
                                "date",
                                "2026-10-03",
                                "venue",
                                "Hall",
                                "zone",
                                zone,
                                "starts",
                                "09:00"));
                assertThat(got.status()).as(zone).isEqualTo(422);
            }
        }
    }

    @Test
    void a_captain_wishes_for_own_players_only() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            assertThat(captain.post("/captain/proposal/A1/wishes", Map.of("player", "S1", "wish", "rest"))
                            .status())
                    .isEqualTo(422);
            assertThat(captain.post("/captain/proposal/A1/wishes", Map.of("player", "nobody", "wish", "rest"))
                            .status())
                    .isEqualTo(422);
        }
    }

    /** A captain who goes back in the browser and changes the sheet sends the key of the form that was answered already. */
    @Test
    void a_form_changed_after_going_back_is_never_taken_for_the_one_answered() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            Map<String, String> form = captain.filled("/captain/sheet/A1", "/captain/sheet/A1", sheet("N", 1));
            assertThat(captain.post("/captain/sheet/A1", form).status()).isEqualTo(200);
            Map<String, String> changed = new LinkedHashMap<>(form);
            changed.putAll(sheet("N", 3));
            Guest.Got again = captain.post("/captain/sheet/A1", changed);
            assertThat(again.status()).as("told, not passed over").isEqualTo(409);
            assertThat(captain.get("/captain/sheet/A1").text()).contains("sealed once");
            changed.put(
                    "seen",
                    captain.filled("/captain/sheet/A1", "/captain/sheet/A1", Map.of())
                            .get("seen"));
            assertThat(captain.post("/captain/sheet/A1", changed).status()).isEqualTo(200);
            assertThat(captain.get("/captain/sheet/A1").text()).contains("sealed 2 times");
        }
    }

    /** The opening asks under a key of its own, which anybody can guess. */
    @Test
    void nobody_stops_the_opening_by_using_up_its_key() {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            home.send("/captain/sheet/A1", "/captain/sheet/A1", sheet("N", 1));
            Guest away = served.captain("S");
            for (String kind : List.of("rubbers", "sheet", "sheets")) {
                Map<String, String> taking = sheet("S", 1);
                taking.put("key", "open/A1/" + kind + "/1/1");
                assertThat(away.send("/captain/sheet/A1", "/captain/sheet/A1", taking)
                                .status())
                        .isEqualTo(200);
                away.post("/conditions/read", Map.of("key", "open/A1/" + kind + "/1/1", "version", "1"));
            }
            served.at(Days.moment("09:45"));
            assertThat(served.ledger
                            .event()
                            .exchange(ExchangeId.sheets(TieId.of("A1")))
                            .isOpened())
                    .isTrue();
        }
    }

    /** Byte for byte: not even the hidden marks of a form grow with what others may not notice. */
    @Test
    void pages_keep_their_length_however_often_the_rival_seals() {
        assertThat(lengths(1)).isEqualTo(lengths(120));
    }

    private static List<Integer> lengths(int seals) {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            Guest away = served.captain("S");
            Guest desk = served.as(Role.DESK);
            for (int i = 0; i < seals; i++) {
                assertThat(home.send("/captain/sheet/A1", "/captain/sheet/A1", sheet("N", i % 8 + 1))
                                .status())
                        .isEqualTo(200);
            }
            served.ask(
                    Days.organiser(),
                    new PostNotice(
                            "Lunch is served", Optional.empty(), Optional.empty(), Optional.empty(), "It is noon."));
            return List.of(
                    away.get("/captain/sheet/A1").body().length(),
                    away.get("/captain").body().length(),
                    desk.get("/desk/tie/A1").body().length(),
                    desk.get("/desk/check-in").body().length());
        }
    }

    @Test
    void a_sheet_given_back_and_sealed_anew_shows_the_desk_the_new_time() {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            Guest desk = served.as(Role.DESK);
            home.send("/captain/sheet/A1", "/captain/sheet/A1", sheet("N", 1));
            served.at(Days.moment("09:10"));
            assertThat(desk.get("/desk/tie/A1").text()).contains("since 09:00");
            assertThat(desk.post(
                                    "/desk/tie/A1/return",
                                    Map.of("side", "home", "exchange", "sheet", "return-reason", "Asked for"))
                            .status())
                    .isEqualTo(200);
            assertThat(desk.get("/desk/tie/A1").text()).doesNotContain("since 09:00");
            home.send("/captain/sheet/A1", "/captain/sheet/A1", sheet("N", 2));
            assertThat(desk.get("/desk/tie/A1").text()).contains("since 09:10").doesNotContain("since 09:00");
            served.at(Days.moment("09:20"));
            home.send("/captain/sheet/A1", "/captain/sheet/A1", sheet("N", 3));
            assertThat(desk.get("/desk/tie/A1").text())
                    .as("a replacement shows nobody a new time")
                    .contains("since 09:10");
        }
    }

    /** Two organisers, each with an own page open: the second is told, and nothing of the first is undone unseen. */
    @Test
    void the_slower_of_two_organisers_is_told_and_overwrites_nothing() {
        try (Served served = oneTie()) {
            Guest one = served.as(Role.ORGANISER);
            Guest two = served.as(Role.ORGANISER);
            for (String[] form : new String[][] {
                {"/organiser/conditions", "/organiser/conditions", "rest_minutes", "11", "12"},
                {"/organiser/event", "/organiser/event", "venue", "Upper Hall", "Lower Hall"},
                {"/organiser/club/N", "/organiser/club/N/club", "name", "Northern", "Norther"}
            }) {
                Map<String, String> first = FormFields.of(one.get(form[0]), form[1]);
                Map<String, String> second = FormFields.of(two.get(form[0]), form[1]);
                first.put(form[2], form[3]);
                second.put(form[2], form[4]);
                assertThat(one.post(form[1], first).status()).as(form[1]).isEqualTo(200);
                Guest.Got late = two.post(form[1], second);
                assertThat(late.status()).as(form[1]).isEqualTo(409);
                assertThat(late.body()).as("what was typed stays").contains("value=\"" + form[4] + "\"");
                assertThat(late.text()).contains("Something changed while you were writing");
            }
        }
    }

    static String raw(Served served, String request) throws IOException {
        URI at = URI.create(served.service.url());
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write(request.replace("\n", "\r\n")
                            .replace("HERE", at.getAuthority())
                            .getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void what_reaches_no_page_is_answered_in_words_with_the_headers_of_every_page() throws IOException {
        try (Served served = oneTie()) {
            for (String request : List.of(
                    "GET /tie/%00 HTTP/1.1\nHost: HERE\n\n",
                    "GET /tie/%zz HTTP/1.1\nHost: HERE\n\n",
                    "POST /desk/check-in%zz HTTP/1.1\nHost: HERE\nContent-Length: 3\n\na=b",
                    "GET / HTTP/1.1\n\n",
                    "GET / HTTP/1.1\nHost: a b\n\n",
                    "GET /" + "x".repeat(9_000) + " HTTP/1.1\nHost: HERE\n\n",
                    "GARBAGE\n\n")) {
                assertThat(raw(served, request))
                        .as(request.substring(0, Math.min(80, request.length())))
                        .matches("(?s)HTTP/1.1 (400|414) .*")
                        .contains(
                                "Content-Security-Policy: default-src 'none';",
                                "X-Content-Type-Options: nosniff",
                                "Cache-Control: no-store",
                                "Connection: close",
                                "The service cannot read what was sent, so nothing was done.")
                        .doesNotContain("badMessage", "STATUS", "Jetty");
            }
        }
    }

    /** RFC 9112, 6.3 and 11.2: what two programs read differently lets one request hide in another. */
    @Test
    void a_message_whose_end_can_be_read_in_two_ways_is_refused() throws IOException {
        try (Served served = oneTie()) {
            for (String lengths : List.of(
                    "Content-Length: 4\nTransfer-Encoding: chunked\n",
                    "Content-Length: 4\nContent-Length: 9\n",
                    "Content-Length: -4\n",
                    "Content-Length: 4\nTransfer-Encoding: xchunked\n")) {
                assertThat(raw(
                                served,
                                "POST /leave HTTP/1.1\nHost: HERE\n" + lengths
                                        + "\n0\n\nGET / HTTP/1.1\nHost: HERE\n\n"))
                        .as(lengths)
                        .matches("(?s)HTTP/1.1 (400|501) .*")
                        .doesNotContain("HTTP/1.1 200");
            }
        }
    }

    /** RFC 9110, 9.3.8: it would show a script what the browser sends by itself. */
    @Test
    void no_method_but_those_of_pages_and_forms_is_answered() throws IOException {
        try (Served served = oneTie()) {
            for (String method : List.of("TRACE", "PUT", "DELETE", "PATCH", "CONNECT", "PROPFIND")) {
                assertThat(raw(served, method + " / HTTP/1.1\nHost: HERE\nX-Mine: echoed\nConnection: close\n\n"))
                        .as(method)
                        .matches("(?s)HTTP/1.1 (400|404|405|501) .*")
                        .doesNotContain("echoed");
            }
        }
    }

    /** A phone that drops off the network in the middle is nothing that anybody could mend: the log stays quiet. */
    @Test
    void a_phone_that_drops_off_leaves_no_trace_in_the_log() throws IOException {
        Logger log = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        ListAppender<ILoggingEvent> lines = new ListAppender<>();
        lines.start();
        log.addAppender(lines);
        try (Served served = oneTie()) {
            URI at = URI.create(served.service.url());
            String form = "POST /desk/check-in HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nContent-Type: " + FORM
                    + "\r\nContent-Length: ";
            for (String half : List.of(
                    form + "500\r\n\r\nplayer=N1",
                    form + "900000\r\n\r\nplayer=" + "x".repeat(100_000),
                    "GET /ties HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\n\r\n",
                    "GET /ti")) {
                for (int i = 0; i < 5; i++) {
                    try (Socket socket = new Socket(at.getHost(), at.getPort())) {
                        socket.setSoLinger(true, 0); // as one that is gone: a reset, not an orderly end
                        socket.getOutputStream().write(half.getBytes(StandardCharsets.US_ASCII));
                    }
                }
            }
            served.stranger().get("/");
        } finally {
            log.detachAppender(lines);
        }
        assertThat(lines.list)
                .filteredOn(line -> line.getLevel().isGreaterOrEqual(Level.WARN))
                .extracting(ILoggingEvent::getFormattedMessage)
                .isEmpty();
    }
}
