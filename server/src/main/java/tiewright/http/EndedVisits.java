package tiewright.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import tiewright.http.visit.Tokens;

/** Cookies whose owner has left: they hold no more, also after a restart, whoever kept a copy. Only their hashes are kept. */
final class EndedVisits {
    static final String FILE = "ended-visits.txt";

    private final Path file;
    private final Set<String> ended = ConcurrentHashMap.newKeySet();

    EndedVisits(Path folder) {
        this.file = folder.resolve(FILE);
        try {
            if (Files.exists(file)) {
                ended.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    boolean isEnded(String cookie) {
        return ended.contains(Tokens.hash(cookie));
    }

    synchronized void end(String cookie) {
        String hash = Tokens.hash(cookie);
        if (!ended.add(hash)) {
            return;
        }
        try {
            if (!Files.exists(file)
                    && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            Files.writeString(file, hash + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
