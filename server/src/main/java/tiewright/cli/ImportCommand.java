package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.Role;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.ImportEvent;
import tiewright.plainfiles.PlainFile;
import tiewright.wording.Words;

@Command(
        name = "import",
        description = "Brings an event folder into a data folder that holds no event yet; everything or nothing.",
        mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {
    /** What belongs to one club alone, and the page that takes it from its captain. */
    private static final Map<PlainFile, String> OF_ONE_CLUB = new EnumMap<>(
            Map.of(
                    PlainFile.GAMES,
                    "film notes belong to one club alone. Its captain gives the file to the service on the page /captain/film.",
                    PlainFile.RALLIES,
                    "film notes belong to one club alone. Its captain gives the file to the service on the page /captain/film.",
                    PlainFile.OWN_PAST_RESULTS,
                    "these earlier games belong to one club alone. Its captain gives the file to the service on the page /captain/past."));

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--data", required = true, paramLabel = "DIR", description = "The data folder of the service.")
    private Path data = Path.of("");

    @Override
    public Integer call() {
        EventFolder read = Folders.any(folder);
        List<FolderFault> faults = Stream.concat(read.missingForImport().stream(), read.faults().stream())
                .toList();
        if (!faults.isEmpty()) {
            throw new BadInput(faults.stream().map(FolderFault::toString).toList());
        }
        try (Ledger ledger = DataFolders.any(data)) {
            Request request = Request.of(UUID.randomUUID().toString(), Actor.of(Role.ORGANISER, "import"));
            Answer answer = ledger.decide(request, ImportEvent.of(read));
            if (answer instanceof Answer.Refused refused) {
                Words words = Words.of(ledger.event(), ledger.directory());
                throw new BadInput(
                        refused.reasons().stream().map(words::sentence).toList());
            }
            told(read, ledger.event());
        }
        return 0;
    }

    private void told(EventFolder read, Event event) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Brought in " + event.about().orElseThrow().name() + ": "
                + event.clubs().size() + " clubs, " + event.players().size() + " players, "
                + event.ties().size() + " ties.");
        OF_ONE_CLUB.forEach((file, why) -> {
            if (read.files().contains(file)) {
                spec.commandLine().getErr().println(file.fileName() + " was looked at and not brought in: " + why);
            }
        });
    }
}
