package tiewright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.ledger.Ledger;
import tiewright.ledger.LedgerException;

@Command(
        name = "backup",
        description =
                "Copies the whole data folder, even while the service runs. The key of sealed sheets is not in it.",
        mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The zip file to make.")
    private Path file = Path.of("");

    @Option(names = "--data", paramLabel = "DIR", required = true, description = "The event's data folder.")
    private Path data = Path.of("");

    @Override
    public Integer call() throws Exception {
        if (Files.exists(file)) {
            throw new BadInput("There is a file " + file + " already: give another name, so that no backup is lost.");
        }
        Path running = Folders.folder(data).resolve("running.json");
        if (!Files.isRegularFile(running) || !fromService(running)) {
            fromFolder();
        }
        spec.commandLine()
                .getErr()
                .println("Backed up to " + file + ". Sheets that are still sealed can be read only with seal.key of "
                        + data + "; without it their clubs seal again.");
        return 0;
    }

    /** False when the service that left the file is gone. */
    private boolean fromService(Path running) throws IOException, InterruptedException {
        JsonNode door = door(running);
        if (door.isMissingNode()) {
            return false;
        }
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create(door.path("local").asText(door.path("url").asText()) + "/control/backup"))
                .header("Authorization", "Bearer " + door.path("token").asText())
                .build();
        try {
            HttpResponse<InputStream> answer = OwnService.client(
                            door.path("certificate").asText(""))
                    .send(request, HttpResponse.BodyHandlers.ofInputStream());
            if (answer.statusCode() != 200) {
                throw new BadInput("The service at " + door.path("url").asText() + " gave no backup ("
                        + answer.statusCode() + ").");
            }
            keep(answer.body());
            return true;
        } catch (ConnectException gone) {
            return false;
        }
    }

    /** Whole or not at all, and for its owner only; named as a backup before it is one. */
    private void keep(InputStream zip) throws IOException {
        Path part = Files.createTempFile(data, "backup", ".part");
        try (InputStream in = zip) {
            // into the file as it is, which nobody else may read; copying would make another
            try (OutputStream out = Files.newOutputStream(part)) {
                in.transferTo(out);
            }
            Ledger.noteBackup(data, Instant.now(), Optional.of(file));
            Files.move(part, file);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** What the service left for commands; a file that cannot be read says no more than none. */
    private static JsonNode door(Path running) throws IOException {
        try {
            JsonNode door = new ObjectMapper().readTree(running.toFile());
            return door.path("token").isTextual() ? door : MissingNode.getInstance();
        } catch (JsonProcessingException broken) {
            return MissingNode.getInstance();
        }
    }

    private void fromFolder() {
        try (Ledger ledger = DataFolders.existing(data)) {
            ledger.backUp(file);
        } catch (LedgerException failure) {
            throw new BadInput(String.valueOf(failure.getMessage()));
        }
    }
}
