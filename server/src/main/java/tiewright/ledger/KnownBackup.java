package tiewright.ledger;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A copy of the data that was made some time; it holds everything that had not been deleted then.
 *
 * @param at when it was made, as far as it is known
 * @param file where it was written; empty where somebody downloaded it
 */
public record KnownBackup(Optional<Instant> at, Optional<Path> file) {
    /** Whether the file still is where it was written. */
    public boolean isThere() {
        return file.filter(Files::exists).isPresent();
    }
}
