package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is sent as it stands: its bytes, its kind (IANA media types), how long a browser keeps it, and nothing else of the jar. */
class StaticFilesTest {
    private static final Path FILES = Path.of("..", "web", "static");
    private static final Served SERVED = Served.empty(Instant.parse("2026-11-28T10:52:00Z"));
    private final HttpClient browser = HttpClient.newHttpClient();

    @AfterAll
    static void stop() {
        SERVED.close();
    }

    private HttpResponse<byte[]> ask(String method, String path, Map<String, String> headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(SERVED.service.url() + path))
                .method(method, HttpRequest.BodyPublishers.noBody());
        headers.forEach(request::header);
        return browser.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    static List<String> all() throws IOException {
        try (Stream<Path> files = Files.walk(FILES)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> FILES.relativize(file).toString().replace('\\', '/'))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void each_file_comes_whole_and_of_a_known_kind(String name) throws Exception {
        HttpResponse<byte[]> got = ask("GET", "/static/" + name, Map.of());
        assertThat(got.statusCode()).isEqualTo(200);
        assertThat(got.body()).isEqualTo(Files.readAllBytes(FILES.resolve(name)));
        assertThat(got.headers().firstValue("Cache-Control")).hasValue("max-age=3600");
        assertThat(got.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
    }

    @ParameterizedTest
    @CsvSource({
        "tiewright.css, text/css",
        "live.js, text/javascript",
        "favicon.svg, image/svg+xml",
        "fonts/OFL.txt, text/plain",
        "fonts/atkinson-hyperlegible-latin-400-normal.woff2, font/woff2"
    })
    void says_what_it_is(String name, String type) throws Exception {
        HttpResponse<byte[]> got = ask("GET", "/static/" + name, Map.of());
        assertThat(got.headers().firstValue("Content-Type").orElse("")).startsWith(type);
        assertThat(ask("HEAD", "/static/" + name, Map.of()).statusCode()).isEqualTo(200);
    }

    /** RFC 9110, 13.1.2 and 15.4.5. */
    @Test
    void what_a_browser_has_already_is_not_sent_again() throws Exception {
        String tag = ask("GET", "/static/tiewright.css", Map.of())
                .headers()
                .firstValue("ETag")
                .orElseThrow();
        HttpResponse<byte[]> again = ask("GET", "/static/tiewright.css", Map.of("If-None-Match", tag));
        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        assertThat(ask("GET", "/static/tiewright.css", Map.of("If-None-Match", "\"other\""))
                        .statusCode())
                .isEqualTo(200);
        assertThat(ask("GET", "/static/desk.css", Map.of("If-None-Match", tag)).statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no-such.css",
                "fonts",
                "fonts/",
                "",
                "tiewright",
                "../migrations.txt",
                "..%2f..%2fmigrations.txt",
                "%2e%2e/%2e%2e/logback.xml",
                "fonts/..%2ftiewright.css",
                "fonts%5cOFL.txt",
                "logback.xml"
            })
    void nothing_else_is_sent(String name) throws Exception {
        HttpResponse<byte[]> got = ask("GET", "/static/" + name, Map.of());
        assertThat(got.statusCode()).isIn(400, 404);
        assertThat(got.headers().firstValue("Content-Type").orElse("")).startsWith("text/html");
        assertThat(new String(got.body(), java.nio.charset.StandardCharsets.UTF_8))
                .doesNotContain("<configuration");
    }
}
