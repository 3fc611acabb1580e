package tiewright.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Recorded;

/**
 * What was acknowledged last, noted beside the database once it was on the disk: how often the database file had been written by then,
 * and what its facts added up to. Where the newest pages are damaged the database goes back to the last whole state without a word, and a
 * changed letter it serves as it stands; by this mark both are found out. The mark is never ahead of the database, so it need not be forced to the
 * disk, and one that is unreadable or missing stops nothing.
 */
final class Acknowledged {
    static final String FILE = "acknowledged.txt";
    private static final Logger LOG = LoggerFactory.getLogger(Acknowledged.class);

    private static final Pattern READ = Pattern.compile("([0-9a-f]+) ([0-9]{20}) ([0-9]{20}) ([0-9a-f]{64})\\R");
    private static final String COLUMNS = Integer.toHexString(Migrations.here().hashCode());

    private final Path folder;

    /** @param version 0 where the file was written anew since: it begins to count again */
    private record Mark(String columns, long version, FactSum sum) {}

    Acknowledged(Path folder) {
        this.folder = folder;
    }

    /** @throws LedgerException if the database file was written less often than was acknowledged */
    void mustReach(long version) {
        if (read().filter(mark -> mark.version > version).isPresent()) {
            throw missing("its newest pages are damaged, or an older file was laid in its place");
        }
    }

    /**
     * What these facts, all that the database holds, add up to.
     *
     * @throws LedgerException if they are not those that were acknowledged
     */
    FactSum added(Iterable<Recorded> facts) {
        Optional<Mark> mark = read().filter(one -> one.columns.equals(COLUMNS));
        FactSum sum = FactSum.NONE;
        boolean agrees = mark.isEmpty() || mark.get().sum.equals(sum);
        for (Recorded fact : facts) {
            sum = sum.then(fact);
            agrees |= mark.isPresent() && mark.get().sum.equals(sum);
        }
        if (!agrees) {
            throw mark.get().sum.facts() > sum.facts()
                    ? missing(sum.facts() + " of " + mark.get().sum.facts() + " facts are left")
                    : told("holds facts that are no longer what was written down");
        }
        return sum;
    }

    /** Once that is on the disk. */
    void note(long version, FactSum sum) {
        try {
            write(new Mark(COLUMNS, version, sum), false);
        } catch (IOException failure) {
            LOG.debug("the mark stays behind, which does no harm", failure);
        }
    }

    /** Before the file is written anew, which keeps its facts and begins to count again. */
    void beginsAnew() throws IOException {
        Optional<Mark> mark = read();
        if (mark.isPresent()) {
            write(new Mark(mark.get().columns, 0, mark.get().sum), true);
        }
    }

    /** A new event begins in a folder whose database was moved away. */
    void ofNothing() {
        try {
            Files.deleteIfExists(folder.resolve(FILE));
        } catch (IOException stays) {
            throw new LedgerException("The folder " + folder + " cannot be used: " + stays.getMessage() + ".", stays);
        }
    }

    private void write(Mark mark, boolean forced) throws IOException {
        Path file = folder.resolve(FILE);
        boolean isNew = !Files.exists(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            if (isNew) {
                DataFolder.ownerOnly(file);
            }
            String line =
                    // of one length, so that it is written over in one go; the columns come first, for a later version
                    // may have more
                    String.format(
                            Locale.ROOT,
                            "%s %020d %020d %s%n",
                            mark.columns,
                            mark.version,
                            mark.sum.facts(),
                            mark.sum.hex());
            channel.write(ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII)), 0);
            channel.truncate(line.length());
            if (forced) {
                channel.force(true);
            }
        }
    }

    private Optional<Mark> read() {
        try {
            Path file = folder.resolve(FILE);
            Matcher parts = READ.matcher(Files.exists(file) ? Files.readString(file, StandardCharsets.ISO_8859_1) : "");
            return parts.matches()
                    ? Optional.of(new Mark(
                            parts.group(1),
                            Long.parseLong(parts.group(2)),
                            new FactSum(Long.parseLong(parts.group(3)), parts.group(4))))
                    : Optional.empty();
        } catch (IOException unreadable) {
            LOG.warn("The file {} cannot be read, so nobody can tell whether the newest facts are there.", FILE);
            return Optional.empty();
        }
    }

    private LedgerException missing(String why) {
        return told("does not hold all that was acknowledged: " + why);
    }

    private LedgerException told(String what) {
        return new LedgerException("The database in " + folder + " " + what
                + ". Copy this folder away first. Then lay the last backup into a new folder with restore and go on from there; or, to go on"
                + " with what is left here, delete the file " + folder.resolve(FILE) + " and start again.");
    }
}
