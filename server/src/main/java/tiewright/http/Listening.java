package tiewright.http;

import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.staticfiles.Location;
import java.util.Map;
import tiewright.http.visit.Parts;

/** How the server listens: where, how much it takes, and what it says with every answer. */
final class Listening {
    private static final long MOST_BYTES = 1_000_000;
    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; media-src blob:;"
                    + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            // to nobody else, but our own forms must say where they come from
            "Referrer-Policy",
            "same-origin",
            "Cache-Control",
            "no-store");

    private Listening() {}

    static void configure(JavalinConfig config, ServiceOptions options) {
        config.startup.showJavalinBanner = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = MOST_BYTES;
        // as much in memory as is taken at all: no file that was sent is ever laid down on the disk
        config.jetty.multipartConfig.maxInMemoryFileSize(Parts.MOST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(Parts.MOST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(Parts.MOST_BYTES, SizeUnit.BYTES);
        config.http.defaultContentType = "text/html; charset=utf-8";
        config.jetty.host = options.host();
        config.jetty.port = options.port();
        options.tls().ifPresent(tls -> config.jetty.addConnector(new TlsConnector(tls, options)::of));
        pages(config);
    }

    /** What is sent as it is, and what is said with every page. */
    private static void pages(JavalinConfig config) {
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/tiewright/static";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "max-age=3600", "X-Content-Type-Options", "nosniff");
        });
        config.routes.before(ctx -> {
            if (!ctx.path().startsWith("/static/")) {
                HEADERS.forEach(ctx::header);
            }
        });
    }
}
