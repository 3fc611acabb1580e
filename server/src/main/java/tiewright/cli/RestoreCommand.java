package tiewright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.ledger.Ledger;
import tiewright.ledger.LedgerException;

@Command(
        name = "restore",
        description =
                "Restores a backup into a new folder, from which the service goes on, for example on the spare laptop.",
        mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The zip file that backup made.")
    private Path file = Path.of("");

    @Option(names = "--data", paramLabel = "DIR", required = true, description = "A new or empty folder.")
    private Path data = Path.of("");

    @Option(
            names = "--key",
            paramLabel = "FILE",
            description = "seal.key of the first folder, to go on reading sealed sheets.")
    private @Nullable Path key;

    @Override
    public Integer call() {
        try {
            var restored =
                    Ledger.restore(Folders.file(file), Optional.ofNullable(key).map(Folders::file), data);
            spec.commandLine().getErr().println("Restored into " + data + ". Go on with: serve --data " + data);
            restored.mustSealAgain()
                    .forEach(sheet -> spec.commandLine()
                            .getErr()
                            .println("The sealed sheet of " + sheet.club() + " for "
                                    + sheet.exchange().tie()
                                    + " cannot be read without the key: the club must seal again."));
            return 0;
        } catch (LedgerException failure) {
            throw new BadInput(String.valueOf(failure.getMessage()));
        }
    }
}
