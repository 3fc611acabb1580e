package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.Held;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.ledger.Answer;
import tiewright.ledger.KnownBackup;
import tiewright.ledger.Ledger;
import tiewright.ledger.LedgerException;
import tiewright.ledger.Request;
import tiewright.setup.EraseData;
import tiewright.wording.DeletionWords;
import tiewright.wording.Words;

@Command(
        name = "erase",
        description = "Counts the private data of a stopped service's folder; with --name it deletes them for good.",
        mixinStandardHelpOptions = true)
final class EraseCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Option(names = "--data", required = true, paramLabel = "DIR", description = "The event's data folder.")
    private Path data = Path.of("");

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "The name of the event, to be sure: deletes everything that is counted.")
    private @Nullable String name;

    @Option(names = "--csv", description = "Print kind,count.")
    private boolean csv;

    @Override
    public Integer call() {
        try (Ledger ledger = DataFolders.existing(data)) {
            Held held = ledger.held();
            Printed printed = new Printed("kind", "count");
            held.all().forEach((kind, count) -> printed.row(csv ? kind : DeletionWords.kind(kind), count));
            printed.to(spec.commandLine().getOut(), csv);
            int status = name == null ? 0 : erase(ledger, name);
            say(ledger);
            return status;
        } catch (LedgerException failure) {
            throw new BadInput(String.valueOf(failure.getMessage()));
        }
    }

    private int erase(Ledger ledger, String typed) {
        Request request = Request.of(UUID.randomUUID().toString(), Actor.of(Role.ORGANISER, "erase"));
        if (ledger.erase(request, held -> new EraseData(held, Optional.of(typed))) instanceof Answer.Refused refused) {
            Words words = Words.of(ledger.event(), ledger.directory());
            refused.reasons().forEach(reason -> spec.commandLine().getErr().println(words.sentence(reason)));
            return IMPOSSIBLE;
        }
        return 0;
    }

    private void say(Ledger ledger) {
        PrintWriter err = spec.commandLine().getErr();
        Event event = ledger.event();
        ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
        err.println(DeletionWords.sentence(event.deletion(), zone));
        ledger.backups().stream()
                .filter(KnownBackup::isThere)
                .forEach(backup -> err.println("A backup still holds what was there then: "
                        + backup.file().orElseThrow()));
    }
}
