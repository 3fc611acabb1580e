package tiewright.saturday;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;

/** What lies between a browser and the service. */
final class Wire {
    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private static final int TRIES = 3;

    private Wire() {}

    /** As browsers do, a page is asked for again when a kept connection turns out to be closed; a form is not. */
    static HttpResponse<String> answer(HttpRequest request) {
        for (int tried = 1; ; tried++) {
            try {
                return CLIENT.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            } catch (IOException failure) {
                if (tried == TRIES || !request.method().equals("GET")) {
                    throw new UncheckedIOException(failure);
                }
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(interrupted);
            }
        }
    }
}
