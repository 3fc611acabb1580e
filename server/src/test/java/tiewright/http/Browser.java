package tiewright.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Sends one request as it is, with these headers and no others, and goes nowhere by itself: for what must hold of every answer. */
final class Browser {
    private final HttpClient client =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();
    private final String url;

    Browser(String url) {
        this.url = url;
    }

    HttpResponse<String> ask(String method, String path, String cookie, Map<String, String> headers) {
        return ask(method, path, cookie, headers, "");
    }

    HttpResponse<String> ask(String method, String path, String cookie, Map<String, String> headers, String body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(url + path));
        headers.forEach(request::header);
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        if (method.equals("POST")) {
            request.header("Content-Type", "application/x-www-form-urlencoded");
        }
        try {
            return client.send(
                    request.method(
                                    method,
                                    method.equals("POST")
                                            ? HttpRequest.BodyPublishers.ofString(body)
                                            : HttpRequest.BodyPublishers.noBody())
                            .build(),
                    HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(
                    method + " " + path + " " + headers + " " + body.substring(0, Math.min(2_000, body.length())),
                    failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
