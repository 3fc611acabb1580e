package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.event.Actor;
import tiewright.event.Days;
import tiewright.event.Decision;
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
    void hundreds_of_long_forms_of_many_phones_leave_the_laptop_and_all_others_a_thread() throws Exception {
        withLongForms(12, MANY / 12, at -> {
            assertThat(page(at, "127.0.0.1")).startsWith("HTTP/1.1 200");
            assertThat(page(at, "127.0.0.30")).startsWith("HTTP/1.1 200");
        });
    }

    /** One captain's link, held by many phones, leaves long forms of other clubs their threads. */
    @Test
    void hundreds_of_long_forms_of_one_link_leave_the_other_links_alone() throws Exception {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            String hostile = served.captain("N").cookie();
            String honest = served.captain("S").cookie();
            URI at = URI.create(served.service.url() + "/captain/sheet/A1");
            List<Socket> slow = new ArrayList<>();
            try {
                for (int i = 0; i < MANY; i++) {
                    Socket socket = begun(at, hostile, "127.0.0." + (2 + i % 12), LONGEST);
                    socket.getOutputStream().write("x".repeat(FIRST).getBytes(StandardCharsets.US_ASCII));
                    slow.add(socket);
                }
                try (Socket socket = begun(at, honest, "127.0.0.30", FIRST)) {
                    socket.setSoTimeout(10_000);
                    socket.getOutputStream()
                            .write("x".repeat(FIRST - "player=".length()).getBytes(StandardCharsets.US_ASCII));
                    assertThat(socket.getInputStream().read()).isEqualTo('H');
                }
            } finally {
                for (Socket socket : slow) {
                    socket.close();
                }
            }
        }
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

    private static final Duration GRACE = Duration.ofSeconds(30);

    /** What a busy machine may take between two lines of a test. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** As soon as the service has seen this request begin. */
    private static void seen(Served served, Socket socket) {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (bytes(served, Duration.ZERO, socket).isEmpty()) {
            assertThat(System.nanoTime()).as("the request is seen").isLessThan(until);
            Thread.onSpinWait();
        }
    }

    /** What has come of this request after a look so much later; empty once it is given up. */
    private static Optional<Long> bytes(Served served, Duration later, Socket socket) {
        return Optional.ofNullable(served.service.giveUpWhatIsSlow(later).get(socket.getLocalSocketAddress()));
    }

    /** How many of these are on their way still, all of them older than a moment. */
    private static long left(Served served, List<Socket> slow) {
        Set<SocketAddress> left =
                served.service.giveUpWhatIsSlow(Duration.ofSeconds(5)).keySet();
        return slow.stream()
                .filter(socket -> left.contains(socket.getLocalSocketAddress()))
                .count();
    }

    private static boolean isGivenUp(Socket socket) throws IOException {
        socket.setSoTimeout(10_000);
        try {
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException open) {
            return false;
        } catch (SocketException reset) {
            return true;
        }
    }

    @Test
    void a_form_that_comes_byte_by_byte_is_given_up_after_half_a_minute() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            URI at = URI.create(served.service.url());
            String cookie = served.as(Role.DESK).cookie();
            served.stranger().get("/");
            for (int length : List.of(LONG, LONGEST)) {
                try (Socket socket = begun(at, cookie, "127.0.0.2", length)) {
                    seen(served, socket);
                    socket.getOutputStream().write("abc".getBytes(StandardCharsets.US_ASCII));
                    assertThat(bytes(served, GRACE.minus(PATIENCE), socket)).isPresent();
                    assertThat(bytes(served, GRACE.plusSeconds(1), socket)).isEmpty();
                    assertThat(isGivenUp(socket))
                            .as("a form of %d bytes", length)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void a_head_that_never_ends_is_given_up_like_a_form() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            URI at = URI.create(served.service.url());
            try (Socket socket = new Socket(at.getHost(), at.getPort())) {
                socket.getOutputStream().write("GET / HTTP/1.1\r\nHost: loc".getBytes(StandardCharsets.US_ASCII));
                seen(served, socket);
                assertThat(bytes(served, GRACE.plusSeconds(1), socket)).isEmpty();
                assertThat(isGivenUp(socket)).isTrue();
            }
        }
    }

    /** 100,000 bytes have 50 seconds more. */
    @Test
    void a_long_form_has_the_time_that_a_slow_network_needs() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            URI at = URI.create(served.service.url());
            String cookie = served.as(Role.DESK).cookie();
            try (Socket socket = begun(at, cookie, "127.0.0.2", LONGEST)) {
                seen(served, socket);
                socket.getOutputStream().write("x".repeat(FIRST).getBytes(StandardCharsets.US_ASCII));
                // once all of it has come, which takes its time
                while (bytes(served, Duration.ZERO, socket).orElseThrow() < FIRST) {
                    Thread.onSpinWait();
                }
                assertThat(bytes(served, GRACE.plusSeconds(50).minus(PATIENCE), socket))
                        .isPresent();
                assertThat(bytes(served, GRACE.plusSeconds(52), socket)).isEmpty();
                assertThat(isGivenUp(socket)).isTrue();
            }
        }
    }

    @Test
    void of_one_phone_at_most_so_many_forms_are_on_their_way_at_once() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            URI at = URI.create(served.service.url());
            String cookie = served.as(Role.DESK).cookie();
            List<Socket> slow = new ArrayList<>();
            try {
                for (int i = 0; i < 70; i++) {
                    slow.add(begun(at, cookie, "127.0.0.2", LONG));
                    slow.add(begun(at, cookie, "127.0.0.1", LONG));
                }
                long until = System.nanoTime() + PATIENCE.toNanos();
                long left = left(served, slow);
                while (left != 134 && System.nanoTime() < until) { // the last ones may still be on their way
                    left = left(served, slow);
                }
                assertThat(left).as("64 of the phone, all of the laptop itself").isEqualTo(134);
            } finally {
                for (Socket socket : slow) {
                    socket.close();
                }
            }
        }
    }

    @Test
    void pages_that_wait_for_news_and_browsers_that_rest_are_left_alone() throws Exception {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            URI at = URI.create(served.service.url());
            try (Socket waiting = new Socket(at.getHost(), at.getPort());
                    Socket resting = new Socket(at.getHost(), at.getPort())) {
                for (Socket socket : List.of(waiting, resting)) {
                    socket.setSoTimeout(10_000);
                    String page = socket == waiting ? "/events" : "/static/none.css";
                    socket.getOutputStream()
                            .write(("GET " + page + " HTTP/1.1\r\nHost: " + at.getAuthority()
                                            + "\r\nAccept: text/event-stream\r\n\r\n")
                                    .getBytes(StandardCharsets.US_ASCII));
                    assertThat(socket.getInputStream().read()).isEqualTo('H');
                }
                // until the service has noticed that it rests
                while (bytes(served, Duration.ZERO, resting).isPresent()
                        || bytes(served, Duration.ZERO, waiting).isPresent()) {
                    Thread.onSpinWait();
                }
                served.service.giveUpWhatIsSlow(GRACE.multipliedBy(10));
                assertThat(isOpen(resting, at)).isTrue();
                assertThat(waiting.getInputStream().read()).isEqualTo('T');
            }
        }
    }

    private static boolean isOpen(Socket socket, URI at) throws IOException {
        socket.getInputStream().skipNBytes(socket.getInputStream().available());
        socket.getOutputStream()
                .write(("GET / HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII));
        return socket.getInputStream().read() >= 0;
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
        String path = at.getPath().isEmpty() ? "/desk/check-in" : at.getPath();
        socket.getOutputStream()
                .write(("POST " + path + " HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nCookie: " + cookie
                                + "\r\nOrigin: http://" + at.getAuthority()
                                + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
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

    /** However long the laptop thinks: who has sent all of a request waits for its answer. */
    @Test
    void an_answer_that_takes_its_time_is_not_given_up() throws Exception {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            String cookie = served.captain("N").cookie();
            URI at = URI.create(served.service.url());
            CountDownLatch thinks = new CountDownLatch(1);
            CountDownLatch done = new CountDownLatch(1);
            Thread busy = new Thread(() -> served.ask(Actor.of(Role.DESK, "test"), (event, given) -> {
                thinks.countDown();
                await(done);
                return new Decision.Accepted(List.of(), List.of());
            }));
            busy.start();
            thinks.await();
            try (Socket socket = new Socket(at.getHost(), at.getPort())) {
                socket.setSoTimeout(10_000);
                socket.getOutputStream()
                        .write(("GET /captain/squad HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nCookie: " + cookie
                                        + "\r\n\r\n")
                                .getBytes(StandardCharsets.US_ASCII));
                while (!isAsked("tiewright.http.captain")) {
                    Thread.onSpinWait();
                }
                assertThat(bytes(served, Duration.ZERO, socket)).isEmpty();
                served.service.giveUpWhatIsSlow(GRACE.multipliedBy(2));
                done.countDown();
                assertThat(socket.getInputStream().read()).isEqualTo('H');
            } finally {
                done.countDown();
                busy.join();
            }
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether a page of this room is being worked on. */
    private static boolean isAsked(String room) {
        return Thread.getAllStackTraces().values().stream()
                .flatMap(Stream::of)
                .anyMatch(frame -> frame.getClassName().startsWith(room));
    }
}
