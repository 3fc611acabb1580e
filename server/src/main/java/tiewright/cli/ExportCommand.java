package tiewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.ClubId;
import tiewright.event.ClubNotes;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.event.KeptGame;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.http.Service;
import tiewright.ledger.Ledger;
import tiewright.plainfiles.FolderExport;
import tiewright.plainfiles.OwnNotes;

@Command(
        name = "export",
        description =
                "Writes the event as plain files into a new folder. What clubs noted about their squads stays out.",
        mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--data", required = true, paramLabel = "DIR", description = "The data folder of the service.")
    private Path data = Path.of("");

    @Option(
            names = "--club",
            paramLabel = "C",
            description =
                    "Add what this club noted: form, chemistry, promises of playing time, film and its own earlier games.")
    private @Nullable String club;

    @Option(
            names = "--link",
            paramLabel = "L",
            description = "The personal link of that club's captain or deputy, once it has one.")
    private String link = "";

    @Override
    public Integer call() throws IOException {
        mustBeNew(folder);
        try (Ledger ledger = DataFolders.existing(data)) {
            OwnNotes own = club == null ? OwnNotes.NONE : notes(ledger, club);
            if (ledger.event().about().isEmpty()) {
                spec.commandLine().getErr().println("The event has no name and date yet: there is nothing to export.");
                return IMPOSSIBLE;
            }
            FolderExport.write(ledger.event(), ledger.directory(), own, ledger.pastGames(), folder);
        }
        spec.commandLine().getOut().println("Written to " + folder + ".");
        return 0;
    }

    /** Files of an earlier export would be taken for files of this one, and may hold what this one leaves out. */
    private static void mustBeNew(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new BadInput(folder + " is a file: give a new folder.");
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.findAny().isPresent()) {
                throw new BadInput(folder + " is not empty: give a new folder, so that nothing old is mixed in.");
            }
        }
    }

    private OwnNotes notes(Ledger ledger, String code) {
        if (!Codes.isCode(code) || ledger.event().club(ClubId.of(code)).isEmpty()) {
            throw new BadInput("There is no club " + code + " in this event.");
        }
        ClubId id = ClubId.of(code);
        if (!mayRead(ledger.event(), id)) {
            throw new BadInput(
                    "What " + code
                            + " noted is for its captain: add --link with the captain's or deputy's personal link, one that still holds.");
        }
        ClubNotes notes = ledger.privateOf(id);
        return OwnNotes.of(notes.forms().values(), notes.chemistry().values())
                .promising(notes.promises().values())
                .filmed(ledger.filmsOf(id))
                .played(ledger.pastGamesOf(id).stream().map(KeptGame::game).toList());
    }

    /** Before a club has any link, all notes about it came with the files that were brought in here. */
    private boolean mayRead(Event event, ClubId id) {
        List<Link> captains = event.links().values().stream()
                .filter(each -> each.role() == Role.CAPTAIN
                        && each.club().filter(id::equals).isPresent())
                .toList();
        String hash = Service.hash(link.substring(link.lastIndexOf('/') + 1));
        return captains.isEmpty()
                || captains.stream()
                        .anyMatch(each -> !each.revoked() && each.hash().equals(hash));
    }
}
