package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.apache.commons.io.file.PathUtils;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Copies that are made by themselves every ten minutes into a second folder, such as a stick. Each is laid back into a folder of its own
 * and read before it counts. None holds the key of the sealed sheets. The newest of this run stay; others in the folder are not touched.
 */
public final class Copies {
    private static final Logger LOG = LoggerFactory.getLogger(Copies.class);
    private static final Duration EVERY = Duration.ofMinutes(10);
    private static final Duration AFTER_TROUBLE = Duration.ofMinutes(1);
    private static final Duration OLD = Duration.ofMinutes(20);
    private static final int KEPT = 12;
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");

    private final Ledger ledger;
    private final Path folder;
    private final LongSupplier nanos;
    private final Deque<Path> made = new ArrayDeque<>();
    private final long began;
    private Optional<Copy> last = Optional.empty();
    private String trouble = "";
    private long next;

    /**
     * A copy that was read back.
     *
     * @param facts how many it holds
     * @param nanos when it was made, by the counter
     */
    private record Copy(Instant at, Path file, long facts, long nanos) {}

    /**
     * How the copies stand.
     *
     * @param at when the last one was made that could be read back; empty before the first
     * @param file where it lies
     * @param facts how many facts it holds
     * @param isOld it is older than twenty minutes, or none has come about
     * @param trouble why the newest one did not come about, as the machine says it; empty where it did
     */
    public record State(Optional<Instant> at, Optional<Path> file, long facts, boolean isOld, String trouble) {}

    /**
     * @param folder made when the first copy is
     * @param nanos counts on evenly whatever clock is set: how old a copy is no clock that jumped can say
     */
    public Copies(Ledger ledger, Path folder, LongSupplier nanos) {
        this.ledger = ledger;
        this.folder = folder.toAbsolutePath().normalize();
        this.nanos = nanos;
        this.began = nanos.getAsLong();
        this.next = began;
    }

    public Path folder() {
        return folder;
    }

    public synchronized State state() {
        long since = nanos.getAsLong() - last.map(Copy::nanos).orElse(began);
        return new State(
                last.map(Copy::at),
                last.map(Copy::file),
                last.map(Copy::facts).orElse(0L),
                since > OLD.toNanos(),
                trouble);
    }

    /** Makes one if it is time; a look more or less changes nothing. */
    public synchronized void look(Instant now) {
        if (nanos.getAsLong() - next >= 0) {
            make(now);
        }
    }

    /** Makes one now. What goes wrong is told by {@link #state}, and tried again a minute later. */
    public synchronized void make(Instant now) {
        try {
            Path file = free(now);
            ledger.backUp(file);
            long facts = tried(file);
            last = Optional.of(new Copy(now, file, facts, nanos.getAsLong()));
            made.addLast(file);
            trouble = "";
            dropOld();
        } catch (IOException | LedgerException failure) {
            trouble = String.valueOf(failure.getMessage());
            LOG.warn("The copy into {} did not come about: {}", folder, trouble);
        }
        next = nanos.getAsLong() + (trouble.isEmpty() ? EVERY : AFTER_TROUBLE).toNanos();
    }

    /** Two in one second, or a clock that was set back, take a number. */
    private Path free(Instant now) throws IOException {
        Files.createDirectories(folder);
        String stamp = STAMP.format(now.atZone(ZoneId.of("UTC")));
        Path file = folder.resolve("tiewright-" + stamp + ".zip");
        for (int number = 2; Files.exists(file); number++) {
            file = folder.resolve("tiewright-" + stamp + "-" + number + ".zip");
        }
        return file;
    }

    /** A copy that cannot be read is worse than none: it is found out here, not on the spare laptop. */
    private long tried(Path file) throws IOException {
        Path place = Files.createTempDirectory(ledger.folder(), "trying");
        Path inside = Files.move(place, place.resolveSibling(place.getFileName() + DataFolder.PART));
        try {
            return Ledger.restore(file, inside).facts();
        } catch (LedgerException unreadable) {
            Files.deleteIfExists(file);
            throw unreadable;
        } finally {
            PathUtils.delete(inside);
        }
    }

    private void dropOld() throws IOException {
        while (made.size() > KEPT) {
            Files.deleteIfExists(made.removeFirst());
        }
    }
}
