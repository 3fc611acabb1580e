package tiewright.http;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.net.SocketAddress;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tiewright.certificate.Authority;
import tiewright.clock.WitnessedClock;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.http.answers.Worked;
import tiewright.http.captain.CaptainRoom;
import tiewright.http.desk.DeskRoom;
import tiewright.http.everybody.EverybodyRoom;
import tiewright.http.film.FilmRoom;
import tiewright.http.organiser.OrganiserRoom;
import tiewright.http.plan.PlanRoom;
import tiewright.http.rulings.RulingsRoom;
import tiewright.http.visit.Door;
import tiewright.http.visit.EverybodysPages;
import tiewright.http.visit.Hall;
import tiewright.http.visit.Laptop;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Templates;
import tiewright.http.visit.Tokens;
import tiewright.ledger.Ledger;
import tiewright.letterbox.Letterbox;

/** The running service: a ledger, the pages over it, and the timer that opens sheets. */
public final class Service implements AutoCloseable {
    /** Where pages wait to be told that something changed. */
    static final String EVENTS = "/events";

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
    private final DoorLog doors = new DoorLog(System::nanoTime);
    private final Visitors visitors;
    private final Gate gate;
    private final ByTheClock byTheClock;
    private final Forecaster forecaster;
    private final Control control;
    private final Path folder;
    private final List<Routes.Route> addresses = new ArrayList<>();
    private final Javalin server;

    private Service(ServiceOptions options, Ledger ledger, WitnessedClock clock) {
        SecureRandom random = new SecureRandom();
        Tokens tokens = new Tokens(Hall.sessionKey(options.data(), random), random);
        Laptop laptop = new Laptop(clock, ledger, options.copies(), options.isRehearsal());
        this.hall = new Hall(
                ledger,
                laptop,
                tokens,
                new Templates(),
                new Worked(),
                new EverybodysPages(),
                new Hall.Address(options.publicUrl()),
                new Hall.Trust(
                        options.tls().flatMap(tls -> Authority.of(tls.certificate())),
                        Letterbox.in(options.data(), random)));
        this.visitors = new Visitors(
                tokens, new EndedVisits(options.data()), options.tls().isPresent());
        this.gate = new Gate(hall, visitors, Hosts.of(options), doors);
        this.folder = options.data();
        this.control = new Control(ledger, tokens.secret());
        this.byTheClock = new ByTheClock(ledger, laptop, live);
        this.forecaster = new Forecaster(hall.ledger());
        this.server = Javalin.create(config -> configure(config, options));
    }

    /** Loads what a server is made of. Beside the opening of a ledger, on another processor, it shortens a start by a tenth. */
    public static void load() {
        new Templates();
        Javalin.create(config -> config.startup.showJavalinBanner = false).javalinServlet();
    }

    /** {@link #start(ServiceOptions, Ledger, WitnessedClock)} by a clock that is believed whatever it says. */
    public static Service start(ServiceOptions options, Ledger ledger, InstantSource clock) {
        return start(options, ledger, WitnessedClock.believing(clock));
    }

    /**
     * Starts to listen. The ledger stays the caller's: it is closed by whoever opened it.
     *
     * @param clock the one that the ledger was opened with
     */
    public static Service start(ServiceOptions options, Ledger ledger, WitnessedClock clock) {
        Opener.lastFact(ledger).ifPresent(last -> clock.remember(last, Opener.playGoesOn(ledger.event())));
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
        ledger.onChange(event -> event.deletion()
                .erasedAt()
                .ifPresent(at -> service.hall.worked().forgetPrivate()));
        service.byTheClock.start();
        return service;
    }

    /** The address without a slash at the end. */
    public String url() {
        return hall.address().url();
    }

    /** Whether what travels to phones can be read by who listens in their network: it leaves this machine, without TLS. */
    public boolean isReadInTheAir() {
        return hall.address().isReadInTheAir();
    }

    /** What people compare of the key to which phones close their sheets. */
    public String fingerprint() {
        return hall.trust().letterbox().fingerprint();
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

    /** All addresses of pages and forms, and for whom they are. */
    List<Routes.Route> addresses() {
        return List.copyOf(addresses);
    }

    /** Opens now what is due, without waiting for the timer. */
    void openWhatIsDue() {
        byTheClock.opener().look();
    }

    /** Deletes now what is due, without waiting for the timer. */
    void eraseWhatIsDue() {
        byTheClock.eraser().look();
    }

    /**
     * Gives up requests that come too slowly, as if so much time had passed.
     *
     * @return of each that is on its way still, by where it comes from, the bytes that came so far
     */
    Map<SocketAddress, Long> giveUpWhatIsSlow(Duration later) {
        return server.jettyServer()
                .server()
                .getConnectors()[0]
                .getContainedBeans(LeastRate.class)
                .iterator()
                .next()
                .look(System.nanoTime() + later.toNanos());
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
        byTheClock.close();
        rooms.forEach(Room::close);
        forecaster.end();
        live.close();
        server.stop();
    }

    private void configure(JavalinConfig config, ServiceOptions options) {
        Listening.configure(config, options, visitors::linkOf);
        config.routes.beforeMatched(gate::guard);
        config.routes.sse(
                EVENTS,
                client -> {
                    Event event = hall.ledger().event();
                    live.join(client, visitors.of(client.ctx(), event), event);
                },
                Door.ANYBODY);
        Routes routes = new Routes(config.routes, gate);
        pages(options).forEach(page -> page.at(routes));
        addresses.addAll(routes.known());
        new Failures(gate).at(config.routes);
    }

    private Stream<Page> pages(ServiceOptions options) {
        Stream<Page> own = Stream.of(
                new EntryPages(visitors, doors),
                control,
                new LanguagePage(),
                new StaticCopyPage(() -> localUrl(options)));
        return Stream.concat(own, rooms.stream().flatMap(room -> room.pages().stream()));
    }
}
