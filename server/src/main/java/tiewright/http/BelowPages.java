package tiewright.http;

import java.util.Map;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * What the server answers by itself before any page is asked: to an address that cannot be read, to no host, when too many wait. In words, with
 * the headers of every page, and without a word of the library. It gives up the connection then, so it says so.
 */
final class BelowPages extends ErrorHandler {
    private static final String PAGE = """
            <!DOCTYPE html>
            <html lang="en">
            <head><meta charset="utf-8"><title>%1$s</title></head>
            <body><h1>%1$s</h1><p>%2$s</p><p><a href="/">What is on now</a></p></body>
            </html>
            """;

    private final Map<String, String> headers;

    /** @param headers those of every page */
    BelowPages(Map<String, String> headers) {
        this.headers = headers;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        headers.forEach(response.getHeaders()::put);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/html; charset=utf-8");
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        Content.Sink.write(response, true, page(response.getStatus()), callback);
        return true;
    }

    @Override
    public boolean errorPageForMethod(@Nullable String method) {
        return true;
    }

    private static String page(int status) {
        return status == HttpStatus.SERVICE_UNAVAILABLE_503
                ? PAGE.formatted(
                        "Too many at once",
                        "The service has more to do than it can. Wait a moment, then load the page again.")
                : PAGE.formatted(
                        "That cannot be read",
                        "The service cannot read what was sent, so nothing was done. Go back, load the page again and send it once more.");
    }
}
