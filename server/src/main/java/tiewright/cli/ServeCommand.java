package tiewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.clock.WitnessedClock;
import tiewright.event.Club;
import tiewright.event.Event;
import tiewright.http.Service;
import tiewright.http.ServiceOptions;
import tiewright.ledger.Ledger;
import tiewright.ledger.LedgerException;

@Command(
        name = "serve",
        description = "Runs the service on one event's data folder and prints where it is.",
        mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    private static final String USUAL_FOLDER = "tiewright-data";
    private static final int SECONDS_TO_STOP = 30;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description =
                    "The event's data folder; made if it is not there. Not given: tiewright-data here, with --demo a new temporary one.")
    private @Nullable Path data;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "7070",
            description = "Port, 0 for any free one (default ${DEFAULT-VALUE}).")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description =
                    "Address to listen on. 0.0.0.0 lets phones of the hall's network join (default ${DEFAULT-VALUE}: this machine only).")
    private String host = "";

    @Option(
            names = "--public-url",
            paramLabel = "URL",
            description = "How phones reach the service, if that is not http://HOST:PORT.")
    private @Nullable String publicUrl;

    @Option(names = "--tls-cert", paramLabel = "PEM", description = "Certificate chain for HTTPS; needs --tls-key.")
    private @Nullable Path tlsCert;

    @Option(names = "--tls-key", paramLabel = "PEM", description = "Its private key, PKCS #8 without a pass phrase.")
    private @Nullable Path tlsKey;

    @Option(
            names = "--copies",
            paramLabel = "DIR",
            description =
                    "A second folder, such as a stick: a copy goes there every ten minutes and is read back. None holds the key of sealed sheets.")
    private @Nullable Path copies;

    @Option(
            names = "--demo",
            description = "Starts from an invented event in mid-morning; the service's clock runs on that day.")
    private boolean demo;

    @Option(
            names = "--new-organiser-link",
            description = "Prints a new organiser's link, for when the last one was lost.")
    private boolean newLink;

    @Option(
            names = "--once",
            description =
                    "Asks itself for the first page and stops: shows whether and how fast this machine can start it.")
    private boolean once;

    private final CountDownLatch stop = new CountDownLatch(1);
    private final CountDownLatch stopped = new CountDownLatch(1);

    @Override
    public Integer call() throws Exception {
        try {
            return serve(options());
        } finally {
            stopped.countDown();
        }
    }

    private int serve(ServiceOptions options) throws Exception {
        mustBeFree();
        CompletableFuture.runAsync(Service::load);
        DemoClock morning = DemoDay.clock();
        WitnessedClock clock =
                demo ? WitnessedClock.believing(morning) : WitnessedClock.of(Clock.systemUTC(), System::nanoTime);
        try (Ledger ledger = Ledger.open(options.data(), clock);
                Service service = Service.start(options, ledger, clock)) {
            PrintWriter out = spec.commandLine().getOut();
            sayWhere(service, out);
            begin(ledger, service, morning);
            if (once) {
                out.println(FirstPage.of(service.url()));
                return 0;
            }
            Runtime.getRuntime().addShutdownHook(new Thread(this::stop));
            out.println("The data are in " + options.data().toAbsolutePath() + ". Stop with Ctrl-C.");
            out.flush();
            stop.await();
        } catch (LedgerException | IllegalArgumentException refused) {
            throw new BadInput(String.valueOf(refused.getMessage()));
        }
        spec.commandLine().getOut().println("Tiewright has stopped. Everything that was entered is kept.");
        return 0;
    }

    /** The invented day where it is asked for, and the links that a new event needs. */
    private void begin(Ledger ledger, Service service, DemoClock morning) {
        if (demo) {
            beginDemo(ledger, service, morning);
        } else if (newLink || FirstLinks.hasNoOrganiser(ledger.event())) {
            new FirstLinks(ledger, service).forTheOrganiser(spec.commandLine().getOut());
        }
    }

    private static void sayWhere(Service service, PrintWriter out) {
        out.println("Tiewright is at " + service.url());
        out.println("Phones close sheets for the key " + service.fingerprint()
                + ". The same key is on captains' slips and at " + service.url() + "/trust.");
        if (service.isReadInTheAir()) {
            out.println(
                    "It is not encrypted: whoever listens on this network can read names and links on their way, and use them."
                            + " Sheets are closed on phones with scripts; without scripts they can be read too."
                            + " Give it a certificate (the command \"certificate\" makes one), or use paper for what must stay secret.");
        }
    }

    private void beginDemo(Ledger ledger, Service service, DemoClock morning) {
        PrintWriter out = spec.commandLine().getOut();
        Optional<DemoPhone> phone = DemoDay.begin(ledger, morning);
        new FirstLinks(ledger, service).forEveryRole(out);
        phone.ifPresent(one -> sayPhone(one, ledger.event(), service.url(), out));
    }

    private static void sayPhone(DemoPhone phone, Event event, String url, PrintWriter out) {
        out.println("The sheet of "
                + event.club(phone.club()).map(Club::name).orElse(phone.club().code()) + " for tie " + phone.tie()
                + " is on a phone alone: the desk has its receipt, nobody has its names.");
        out.println("To hold that phone, come in as its captain, then open in the same browser:");
        out.println("  " + url + phone.path());
    }

    /** The machine ends this program when this returns: not before service and ledger are closed. */
    private void stop() {
        stop.countDown();
        try {
            if (!stopped.await(SECONDS_TO_STOP, TimeUnit.SECONDS)) {
                spec.commandLine()
                        .getErr()
                        .println("Tiewright did not close in " + SECONDS_TO_STOP
                                + " seconds and was ended all the same; what was acknowledged is kept.");
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Asked before anything is opened, so that the answer is a sentence. */
    private void mustBeFree() {
        try (ServerSocket tried = new ServerSocket(port, 1, InetAddress.getByName(host))) {
            tried.getLocalPort();
        } catch (IOException taken) {
            throw new BadInput(
                    "The service cannot listen at " + host + ", port " + port
                            + ": another program uses the port, or the address is not one of this machine. Choose another with --port or --host.");
        }
    }

    private ServiceOptions options() {
        if ((tlsCert == null) != (tlsKey == null)) {
            throw new BadInput("--tls-cert and --tls-key belong together: give both or neither.");
        }
        if (once && (tlsCert != null || publicUrl != null)) {
            throw new BadInput(
                    "--once asks for the page on this machine over plain HTTP: leave --public-url, --tls-cert and --tls-key out.");
        }
        if (port < 0 || port > 65535) {
            throw new BadInput("A port is a number from 0 to 65535, not " + port + ".");
        }
        Optional<ServiceOptions.Tls> tls = tlsCert == null
                ? Optional.empty()
                : Optional.of(new ServiceOptions.Tls(Folders.file(tlsCert), Folders.file(tlsKey)));
        return new ServiceOptions(
                folder(), host, port, Optional.ofNullable(publicUrl), tls, Optional.ofNullable(copies), false);
    }

    private Path folder() {
        try {
            if (data == null && demo) {
                return Files.createTempDirectory("tiewright-demo");
            }
            return Files.createDirectories(data == null ? Path.of(USUAL_FOLDER) : data);
        } catch (IOException failure) {
            throw new BadInput("The folder " + (data == null ? USUAL_FOLDER : data)
                    + " cannot be made or used. Give another with --data.");
        }
    }
}
