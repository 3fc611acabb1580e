package tiewright.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;

/** The one script that comes from a library. */
final class StaticExtras implements Page {
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.7/dist/htmx.min.js";

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ANYBODY,
                "/static/htmx.js",
                visit -> visit.ctx()
                        .header("Cache-Control", "max-age=3600")
                        .contentType("text/javascript; charset=utf-8")
                        .result(htmx()));
    }

    private static byte[] htmx() {
        try (InputStream in = StaticExtras.class.getResourceAsStream(HTMX)) {
            if (in == null) {
                throw new IllegalStateException("the script " + HTMX + " is not on the class path");
            }
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
