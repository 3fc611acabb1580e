package tiewright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.concurrent.Callable;
import org.apache.commons.io.file.PathUtils;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.clock.WitnessedClock;
import tiewright.event.Actor;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.http.Service;
import tiewright.http.ServiceOptions;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.LedgerException;
import tiewright.ledger.Request;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FolderExport;
import tiewright.plainfiles.ImportEvent;
import tiewright.plainfiles.OwnNotes;

/** An event to play on before it counts: made from a copy, in a folder that is gone at the end, with links and a time of its own. */
@Command(
        name = "rehearse",
        description =
                "Plays an event through on a copy of it (see backup): nothing counts and nothing stays. Type a time such as 11:30 to go there, and end the input or press Ctrl-C to stop.",
        mixinStandardHelpOptions = true)
final class RehearseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "COPY", description = "A backup of the event; it is only read.")
    private Path copy = Path.of("");

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "7071",
            description = "Port, 0 for any free one (default ${DEFAULT-VALUE}).")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Address to listen on; 0.0.0.0 lets phones join (default ${DEFAULT-VALUE}).")
    private String host = "";

    @Option(
            names = "--at",
            paramLabel = "HH:MM",
            description = "The time to begin at; not given: when the event starts.")
    private @Nullable LocalTime at;

    @Override
    public Integer call() throws IOException {
        Path place = Files.createTempDirectory("tiewright-rehearsal");
        Thread atTheEnd = new Thread(() -> delete(place));
        Runtime.getRuntime().addShutdownHook(atTheEnd);
        try {
            EventFolder event = event(Folders.file(copy), place);
            play(event, place);
        } catch (LedgerException | IllegalArgumentException refused) {
            throw new BadInput(String.valueOf(refused.getMessage()));
        } finally {
            Runtime.getRuntime().removeShutdownHook(atTheEnd);
            delete(place);
        }
        return 0;
    }

    /** Names, conditions, draw and results; no sealed sheet, no note of a club, no link and no key travels this way. */
    private static EventFolder event(Path copy, Path place) throws IOException {
        Path original = place.resolve("original");
        Path files = place.resolve("files");
        Ledger.restore(copy, original);
        try (Ledger ledger = DataFolders.any(original)) {
            FolderExport.write(ledger.event(), ledger.directory(), OwnNotes.NONE, ledger.pastGames(), files);
        }
        delete(original);
        return EventFolder.read(files);
    }

    private void play(EventFolder event, Path place) throws IOException {
        SetUpFact.EventDescribed about = event.event().about().orElseThrow();
        MovedClock clock = new MovedClock(
                about.date().atTime(at == null ? about.starts() : at).atZone(about.zone()));
        ServiceOptions options = ServiceOptions.rehearsal(place.resolve("data"), host, port);
        try (Ledger ledger = Ledger.open(options.data(), clock)) {
            Request request = Request.of("rehearsal", Actor.of(Role.ORGANISER, "rehearsal"));
            if (ledger.decide(request, ImportEvent.of(event)) instanceof Answer.Refused refused) {
                throw new IllegalArgumentException("The copy cannot be played on: " + refused.reasons());
            }
            try (Service service = Service.start(options, ledger, WitnessedClock.believing(clock))) {
                PrintWriter out = spec.commandLine().getOut();
                out.println("The rehearsal of " + about.name() + " is at " + service.url() + ". Nothing of it counts.");
                new FirstLinks(ledger, service).forEveryRole(out);
                out.println("It is " + clock.now() + ". Type a time such as 11:30 to go there.");
                out.flush();
                listen(clock, out);
            }
        }
    }

    /** Until the input ends. */
    private static void listen(MovedClock clock, PrintWriter out) throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            try {
                clock.goTo(LocalTime.parse(line.strip()));
                out.println("It is " + clock.now() + ".");
            } catch (DateTimeParseException noTime) {
                out.println("\"" + line.strip() + "\" is not a time of day: type it like 11:30.");
            }
            out.flush();
        }
    }

    private static void delete(Path place) {
        if (!Files.exists(place)) {
            return;
        }
        try {
            PathUtils.deleteDirectory(place);
        } catch (IOException stays) {
            System.err.println("The folder " + place + " could not be deleted: delete it by hand, it holds names.");
        }
    }
}
