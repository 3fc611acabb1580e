package tiewright.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** A note on the disk that something is being deleted: whoever opens the folder next finishes what was cut off. */
record ErasingMark(Path file) {
    /** Returns when the request that deletes is noted on the disk. */
    void begin(String request) throws IOException {
        Files.writeString(file, request);
        DataFolder.ownerOnly(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** The request whose deleting was begun and not finished. */
    Optional<String> request() throws IOException {
        return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    }

    void done() throws IOException {
        Files.deleteIfExists(file);
    }
}
