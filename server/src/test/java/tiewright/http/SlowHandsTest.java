package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
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

    private static final int LONGEST = 900_000;
    private static final int FIRST = 100_000;

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

    /** Of forms too long to be read before a thread takes them, from one phone: other phones and the laptop itself are answered. */
    @Test
    void hundreds_of_long_forms_of_one_phone_leave_the_others_alone() throws Exception {
        withLongForms(1, MANY, at -> {
            assertThat(page(at, "127.0.0.1")).startsWith("HTTP/1.1 200");
            assertThat(page(at, "127.0.0.30")).startsWith("HTTP/1.1 200");
        });
    }

    @Test
    void hundreds_of_long_forms_of_many_phones_leave_the_laptop_itself_a_thread() throws Exception {
        withLongForms(12, MANY / 12, at -> assertThat(page(at, "127.0.0.1")).startsWith("HTTP/1.1 200"));
    }

    private interface Asking {
        void at(URI at) throws IOException;
    }

    private static void withLongForms(int phones, int ofEach, Asking asking) throws IOException {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            String cookie = served.as(Role.DESK).cookie();
            URI at = URI.create(served.service.url());
            List<Socket> slow = new ArrayList<>();
            try {
                for (int i = 0; i < phones * ofEach; i++) {
                    Socket socket = begun(at, cookie, "127.0.0." + (2 + i % phones), LONGEST);
                    socket.getOutputStream().write("x".repeat(FIRST).getBytes(StandardCharsets.US_ASCII));
                    slow.add(socket);
                }
                for (int i = 0; i < 5; i++) {
                    asking.at(at);
                }
            } finally {
                for (Socket socket : slow) {
                    socket.close();
                }
            }
        }
    }

    /** Pages that wait to be told of news take no thread, however many of them one address has: a hall behind one router. */
    @Test
    void many_who_wait_for_news_at_one_address_leave_it_open() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            URI at = URI.create(served.service.url());
            List<Socket> waiting = new ArrayList<>();
            try {
                for (int i = 0; i < MANY; i++) {
                    Socket socket = new Socket(
                            InetAddress.getByName(at.getHost()), at.getPort(), InetAddress.getByName("127.0.0.2"), 0);
                    socket.setSoTimeout(10_000);
                    socket.getOutputStream()
                            .write(("GET /events HTTP/1.1\r\nHost: " + at.getAuthority()
                                            + "\r\nAccept: text/event-stream\r\n\r\n")
                                    .getBytes(StandardCharsets.US_ASCII));
                    assertThat(socket.getInputStream().read()).isEqualTo('H'); // HTTP/1.1 200
                    waiting.add(socket);
                }
                assertThat(page(at, "127.0.0.2")).startsWith("HTTP/1.1 200");
                assertThat(page(at, "127.0.0.3")).startsWith("HTTP/1.1 200");
            } finally {
                for (Socket socket : waiting) {
                    socket.close();
                }
            }
        }
    }

    /** What the public page answers to somebody at this address within ten seconds. */
    private static String page(URI at, String from) throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getByName(at.getHost()), at.getPort(), InetAddress.getByName(from), 0)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write(("GET / HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The head of a form and the first of its bytes. */
    private static Socket begun(URI at, String cookie) throws IOException {
        return begun(at, cookie, "127.0.0.1", LONG);
    }

    private static Socket begun(URI at, String cookie, String from, int length) throws IOException {
        Socket socket = new Socket(InetAddress.getByName(at.getHost()), at.getPort(), InetAddress.getByName(from), 0);
        socket.getOutputStream()
                .write(("POST /desk/check-in HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nCookie: " + cookie
                                + "\r\nOrigin: " + at + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                                + "Content-Length: " + length + "\r\n\r\nplayer=")
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
