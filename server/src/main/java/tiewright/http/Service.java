package tiewright.http;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import io.javalin.security.RouteRole;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.http.answers.Asking;
import tiewright.http.answers.Worked;
import tiewright.http.captain.CaptainRoom;
import tiewright.http.desk.DeskRoom;
import tiewright.http.everybody.EverybodyRoom;
import tiewright.http.film.FilmRoom;
import tiewright.http.organiser.OrganiserRoom;
import tiewright.http.plan.PlanRoom;
import tiewright.http.rulings.RulingsRoom;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.EverybodysPages;
import tiewright.http.visit.Hall;
import tiewright.http.visit.Page;
import tiewright.http.visit.Parts;
import tiewright.http.visit.Room;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Templates;
import tiewright.http.visit.Tokens;
import tiewright.http.visit.Visit;
import tiewright.http.visit.Visitor;
import tiewright.ledger.Ledger;

/** The running service: a ledger, the pages over it, and the timer that opens sheets. */
public final class Service implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Service.class);
    private static final String VISIT = "visit";
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

    private final Hall hall;
    private final Live live = new Live();
    private final CaptainRoom captains = new CaptainRoom();
    private final PlanRoom plans = new PlanRoom();
    private final List<Room> rooms = List.of(
            new EverybodyRoom(),
            captains,
            new FilmRoom(),
            new DeskRoom(),
            new RulingsRoom(),
            plans,
            new OrganiserRoom());
    private final Visitors visitors;
    private final Opener opener;
    private final Forecaster forecaster;
    private final Eraser eraser;
    private final Control control;
    private final Path folder;
    private final Javalin server;

    private Service(ServiceOptions options, Ledger ledger, Clock clock) {
        SecureRandom random = new SecureRandom();
        Tokens tokens = new Tokens(Hall.sessionKey(options.data(), random), random);
        this.hall = new Hall(
                ledger,
                clock,
                tokens,
                new Templates(),
                new Worked(),
                new EverybodysPages(),
                new Hall.Address(options.publicUrl()));
        this.visitors = new Visitors(tokens, options.tls().isPresent());
        this.folder = options.data();
        this.control = new Control(ledger, tokens.secret());
        this.opener = new Opener(ledger, clock, live);
        this.forecaster = new Forecaster(hall.ledger());
        this.eraser = new Eraser(ledger, clock);
        this.server = Javalin.create(config -> configure(config, options));
    }

    /** Loads what a server is made of. Beside the opening of a ledger, on another processor, it shortens a start by a tenth. */
    public static void load() {
        new Templates();
        Javalin.create(config -> config.startup.showJavalinBanner = false).javalinServlet();
    }

    /** Starts to listen. The ledger stays the caller's: it is closed by whoever opened it. */
    public static Service start(ServiceOptions options, Ledger ledger, Clock clock) {
        Service service = new Service(options, ledger, clock);
        service.server.start();
        service.hall
                .address()
                .listening(options.tls().isPresent() ? "https" : "http", options.host(), service.server.port());
        service.control.announce(
                options.data(),
                service.url(),
                service.localUrl(options),
                options.tls().map(ServiceOptions.Tls::certificate));
        ledger.onChange(service.live::changed);
        ledger.onChange(service.forecaster::changed);
        service.opener.start();
        service.eraser.start();
        return service;
    }

    /** The address without a slash at the end. */
    public String url() {
        return hall.address().url();
    }

    /** The address that a personal link with this secret has. */
    public String link(String secret) {
        return url() + "/enter/" + secret;
    }

    /** A fresh secret for a personal link; it is nowhere kept. */
    public String newLinkSecret() {
        return hall.tokens().linkSecret();
    }

    /** The hash under which a link is kept. */
    public static String hash(String secret) {
        return Tokens.hash(secret);
    }

    /** Opens now what is due, without waiting for the timer. */
    void openWhatIsDue() {
        opener.look();
    }

    /** Deletes now what is due, without waiting for the timer. */
    void eraseWhatIsDue() {
        eraser.look();
    }

    /** Waits for the plan of the day that a captain asked for. */
    void awaitPlanOf(ClubId club) {
        captains.await(club);
    }

    /** Waits until no search for an order of play goes on. */
    void awaitPlans() {
        plans.await();
    }

    /** How a command on this machine reaches the service, whatever its public address. */
    private String localUrl(ServiceOptions options) {
        String host = options.host().equals("0.0.0.0") ? "127.0.0.1" : options.host();
        return (options.tls().isPresent() ? "https" : "http") + "://" + host + ":" + server.port();
    }

    @Override
    public void close() {
        Control.forget(folder);
        opener.close();
        eraser.close();
        rooms.forEach(Room::close);
        forecaster.end();
        live.close();
        server.stop();
    }

    private void configure(JavalinConfig config, ServiceOptions options) {
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
        config.routes.beforeMatched(this::guard);
        config.routes.sse(
                "/events",
                client -> {
                    Event event = hall.ledger().event();
                    live.join(client, visitors.of(client.ctx(), event), event);
                },
                Door.ANYBODY);
        Routes routes = new Routes(config.routes, this::visit);
        pages().forEach(page -> page.at(routes));
        new Failures(this::visit).at(config.routes);
    }

    private Stream<Page> pages() {
        Stream<Page> own = Stream.of(new EntryPages(visitors), control, new StaticExtras());
        return Stream.concat(own, rooms.stream().flatMap(room -> room.pages().stream()));
    }

    /** The visit of this request, made once: what the guard let in is what the page answers. */
    private Visit visit(Context ctx) {
        Visit known = ctx.attribute(VISIT);
        if (known != null) {
            return known;
        }
        Event event = hall.ledger().event();
        Visitor visitor = visitors.of(ctx, event);
        Asking asking = Asking.of(event, visitor.viewer(), hall.clock().instant(), hall.ledger(), hall.worked());
        Visit visit = new Visit(ctx, hall, visitor, asking);
        ctx.attribute(VISIT, visit);
        return visit;
    }

    /** Before any page: may this visitor open the door, and does a form come from our own page? */
    private void guard(Context ctx) {
        Set<RouteRole> doors = ctx.routeRoles();
        Visit visit = visit(ctx);
        for (RouteRole door : doors) {
            if (door instanceof Door one && !one.opensFor(visit.role())) {
                throw new ClosedDoor(one);
            }
        }
        boolean oddParts = isInParts(ctx) && !doors.contains(Parts.WELCOME);
        if (ctx.method() == io.javalin.http.HandlerType.POST && (oddParts || !isFromOwnPage(ctx))) {
            LOG.warn("A form that does not come from a page of this service was refused: {}", ctx.path());
            throw new ClosedDoor(Door.ANYBODY);
        }
    }

    private boolean isFromOwnPage(Context ctx) {
        String origin = ctx.header("Origin");
        if (origin == null) {
            String site = ctx.header("Sec-Fetch-Site");
            return site == null || site.equals("same-origin") || site.equals("none");
        }
        return origin.equals(hall.address().url())
                || origin.replaceFirst("^https?://", "").equals(ctx.header("Host"));
    }

    /** Only forms with files are sent in parts; of any other address it cannot be a page of ours. */
    private static boolean isInParts(Context ctx) {
        return String.valueOf(ctx.contentType()).toLowerCase(Locale.ROOT).startsWith("multipart/");
    }
}
