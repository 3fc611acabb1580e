package tiewright.http;

import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.component.LifeCycle;
import tiewright.http.visit.Parts;

/** How the server listens: where, how much it takes, and what it says with every answer. */
final class Listening {
    private static final long MOST_BYTES = 1_000_000;
    /** Browsers that join in one moment and wait to be heard. */
    private static final int MOST_WAITING = 4096;

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

    /** @param links the name of the link by which a request comes, if any */
    static void configure(JavalinConfig config, ServiceOptions options, Function<Request, Optional<String>> links) {
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
        config.jetty.addConnector((server, http) -> connector(server, http, options));
        config.jetty.modifyServer(server -> shareThreads(server, links));
        pages(config, options);
    }

    private static Connector connector(Server server, HttpConfiguration http, ServiceOptions options) {
        ServerConnector connector = options.tls()
                .map(tls -> new TlsConnector(tls).of(server, http))
                .orElseGet(() -> new ServerConnector(server, new HttpConnectionFactory(http)));
        connector.setHost(options.host());
        connector.setPort(options.port());
        connector.setAcceptQueueSize(MOST_WAITING);
        connector.addBean(new LeastRate(connector));
        return connector;
    }

    private static void shareThreads(Server server, Function<Request, Optional<String>> links) {
        server.addEventListener(new LifeCycle.Listener() {
            @Override
            public void lifeCycleStarting(LifeCycle event) {
                server.setErrorHandler(new BelowPages(HEADERS));
                server.setHandler(Threads.shared(server.getHandler(), Service.EVENTS, links));
            }
        });
    }

    /** What is sent as it is, and what is said with every page. */
    private static void pages(JavalinConfig config, ServiceOptions options) {
        new StaticFiles().at(config);
        config.routes.before(ctx -> {
            HEADERS.forEach(ctx::header);
            // browsers heed it only where they trust the certificate (RFC 6797, 8.1)
            options.tls().ifPresent(tls -> ctx.header("Strict-Transport-Security", "max-age=2592000"));
        });
    }
}
