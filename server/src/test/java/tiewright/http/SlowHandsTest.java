package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Role;

/** Phones that send their forms slowly, or never to the end, shut nobody out. */
class SlowHandsTest {
    /** More than the service has threads. */
    private static final int MANY = 300;

    private static final int LONG = 5_000;

    @Test
    void hundreds_of_forms_that_do_not_end_leave_the_hall_open() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            String cookie = served.as(Role.DESK).cookie();
            URI at = URI.create(served.service.url());
            List<Socket> slow = new ArrayList<>();
            try {
                for (int i = 0; i < MANY; i++) {
                    slow.add(begun(at, cookie));
                }
                for (int i = 0; i < 20; i++) {
                    HttpResponse<String> answer = HttpClient.newHttpClient()
                            .send(
                                    HttpRequest.newBuilder(at.resolve("/"))
                                            .timeout(Duration.ofSeconds(10))
                                            .build(),
                                    HttpResponse.BodyHandlers.ofString());
                    assertThat(answer.statusCode()).isEqualTo(200);
                }
            } finally {
                for (Socket socket : slow) {
                    socket.close();
                }
            }
        }
    }

    /** The head of a form and the first of its bytes. */
    private static Socket begun(URI at, String cookie) throws IOException {
        Socket socket = new Socket(at.getHost(), at.getPort());
        socket.getOutputStream()
                .write(("POST /desk/check-in HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nCookie: " + cookie
                                + "\r\nOrigin: " + at + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                                + "Content-Length: " + LONG + "\r\n\r\nplayer=")
                        .getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        return socket;
    }

    @Test
    void a_form_that_comes_in_pieces_is_read_whole() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            String cookie = served.as(Role.DESK).cookie();
            URI at = URI.create(served.service.url());
            try (Socket socket = begun(at, cookie)) {
                socket.getOutputStream()
                        .write("x".repeat(LONG - "player=".length()).getBytes(StandardCharsets.US_ASCII));
                socket.shutdownOutput();
                String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                assertThat(answer).startsWith("HTTP/1.1 422");
            }
        }
    }
}
