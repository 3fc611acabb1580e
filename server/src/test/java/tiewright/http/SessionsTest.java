package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** Who somebody is changes by that person's own press alone, and ends when that person leaves. */
class SessionsTest {
    private static Served served() {
        return Served.empty(Days.moment("09:00"));
    }

    private static String page(String url, String cookie) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(url + "/"))
                .header("Cookie", cookie)
                .build();
        return HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofString())
                .body();
    }

    @Test
    void every_page_of_somebody_offers_to_sign_out_and_a_strangers_does_not() throws Exception {
        try (Served served = served()) {
            assertThat(served.as(Role.DESK).get("/desk").body()).contains("action=\"/leave\"");
            assertThat(served.stranger().get("/").body()).doesNotContain("/leave");
        }
    }

    @Test
    void leaving_ends_the_cookie_at_the_service_also_after_a_restart() throws Exception {
        try (Served served = served()) {
            Guest desk = served.as(Role.DESK);
            String kept = desk.cookie();
            assertThat(page(served.service.url(), kept)).contains("desk");
            desk.post("/leave", Map.of());
            assertThat(page(served.service.url(), kept)).doesNotContain("href=\"/desk\"");
            try (Service again =
                    Service.start(ServiceOptions.onLoopback(served.folder, 0), served.ledger, served.clock)) {
                assertThat(page(again.url(), kept)).doesNotContain("href=\"/desk\"");
            }
        }
    }

    @Test
    void a_link_that_another_site_leads_to_or_a_program_looks_at_changes_nobody() {
        try (Served served = served()) {
            Guest desk = served.as(Role.DESK);
            String link = served.link(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "court 2")
                    .substring(served.service.url().length());
            String before = desk.cookie();
            desk.head(link);
            Guest.Got asked = desk.get(link, Map.of("Sec-Fetch-Site", "cross-site"));
            assertThat(asked.text()).contains("Open this personal link?", "court 2");
            assertThat(desk.get(link).text()).contains("Open this personal link?");
            assertThat(desk.cookie()).isEqualTo(before);
            Guest stranger = served.stranger();
            stranger.get(link, Map.of("Sec-Fetch-Site", "cross-site"));
            assertThat(stranger.cookie()).isEmpty();
            assertThat(stranger.postFrom("http://elsewhere.example", link, Map.of())
                            .status())
                    .isEqualTo(403);
            assertThat(stranger.cookie()).isEmpty();
        }
    }

    @Test
    void a_press_on_the_page_that_asks_lets_in() {
        try (Served served = served()) {
            String link = served.link(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "court 2")
                    .substring(served.service.url().length());
            Guest desk = served.as(Role.DESK);
            assertThat(desk.send(link, link, Map.of()).path()).isEqualTo("/cards");
            assertThat(served.stranger()
                            .get(link, Map.of("Sec-Fetch-Site", "none"))
                            .path())
                    .isEqualTo("/cards");
        }
    }

    /** Plain HTTP beyond the own machine is read by whoever listens in the hall. */
    @Test
    void a_service_without_tls_that_phones_reach_says_that_it_can_be_listened_to() {
        try (Served served = Served.empty(Days.moment("09:00"))
                .given(Days.oneTie().facts().stream().map(Recorded::fact).toList(), List.of())) {
            Map<String, Boolean> heard = Map.of(
                    "http://10.0.0.7:7070", true,
                    "https://10.0.0.7:7070", false,
                    "http://127.0.0.1:7070", false);
            heard.forEach((url, isRead) -> {
                ServiceOptions options =
                        new ServiceOptions(served.folder, "127.0.0.1", 0, Optional.of(url), Optional.empty());
                try (Service service = Service.start(options, served.ledger, served.clock)) {
                    assertThat(service.isReadInTheAir()).as(url).isEqualTo(isRead);
                }
            });
            assertThat(served.captain("N").get("/captain/sheet/A1").text()).doesNotContain("whoever listens");
        }
    }

    @Test
    void two_events_on_one_machine_have_cookies_of_their_own() {
        try (Served one = served();
                Served other = served()) {
            assertThat(one.as(Role.DESK).cookie().split("=")[0])
                    .isNotEqualTo(other.as(Role.DESK).cookie().split("=")[0]);
        }
    }

    @Test
    void a_name_that_is_not_the_services_own_is_refused_with_the_way_to_allow_it() throws Exception {
        try (Served served = served()) {
            assertThat(asked(served, "evil.example")).contains(" 421 ", "--public-url");
            assertThat(asked(served, "localhost:7070")).contains(" 200 ");
            assertThat(asked(served, "10.0.0.7:7070")).contains(" 200 ");
        }
    }

    private static String asked(Served served, String host) throws IOException {
        URI at = URI.create(served.service.url());
        try (java.net.Socket socket = new java.net.Socket(at.getHost(), at.getPort())) {
            socket.getOutputStream()
                    .write(("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void the_list_of_ended_visits_is_for_its_owner_and_holds_no_cookie() throws IOException {
        try (Served served = served()) {
            Guest desk = served.as(Role.DESK);
            String kept = desk.cookie();
            desk.post("/leave", Map.of());
            String file = Files.readString(served.folder.resolve(EndedVisits.FILE));
            assertThat(file).matches("[0-9a-f]{64}\n").doesNotContain(kept.split("=")[1]);
            assertThat(Files.getPosixFilePermissions(served.folder.resolve(EndedVisits.FILE)))
                    .hasSize(2);
        }
    }
}
