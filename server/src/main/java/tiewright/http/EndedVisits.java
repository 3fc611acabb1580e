package tiewright.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.http.visit.Tokens;

/** Cookies whose owner has left: they hold no more, also after a restart, whoever kept a copy. Only their hashes are kept. */
final class EndedVisits {
    private static final Logger LOG = LoggerFactory.getLogger(EndedVisits.class);

    static final String FILE = "ended-visits.txt";

    private final Path file;
    private final Set<String> ended = ConcurrentHashMap.newKeySet();
    private final List<String> unwritten = new ArrayList<>();

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

    /** Holds at once. What the disk does not take is written with the next one. */
    synchronized void end(String cookie) {
        String hash = Tokens.hash(cookie);
        if (!ended.add(hash)) {
            return;
        }
        unwritten.add(hash);
        try {
            if (!Files.exists(file)
                    && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            Files.write(file, unwritten, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            unwritten.clear();
        } catch (IOException failure) {
            LOG.warn(
                    "Who left is signed out until the next start only, for {} could not be written: {}",
                    file,
                    failure.getMessage());
        }
    }
}
