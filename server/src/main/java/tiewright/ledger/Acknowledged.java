package tiewright.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Recorded;

/**
 * What was acknowledged last, noted beside the database once it was on the disk: how often the database file had been written by then, what
 * its facts added up to, how long the file was and what its end was like. Where the newest pages are damaged the database goes back to the
 * last whole state without a word, and a changed letter it serves as it stands; by this mark both are found out. And where the power went,
 * the database takes pages as whole of which the disk kept parts only: as it only ever appends, all that lies behind the mark is left out, for
 * nobody was answered about it. So the mark is forced to the disk before anybody is answered, and never ahead of the database. One that is
 * unreadable or missing stops nothing.
 */
final class Acknowledged implements AutoCloseable {
    static final String FILE = "acknowledged.txt";
    private static final Logger LOG = LoggerFactory.getLogger(Acknowledged.class);

    private static final Pattern READ =
            Pattern.compile("([0-9a-f]+) ([0-9]{20}) ([0-9]{20}) ([0-9a-f]{64})(?: ([0-9]{20}) ([0-9a-f]{16}))?\\R");
    private static final String COLUMNS = Integer.toHexString(Migrations.here().hashCode());

    /**
     * An opening and one decision write the file less often than that; where it was written more often since the mark, somebody has laid a
     * file here that went on elsewhere.
     */
    private static final int OF_ONE_CUT = 16;

    private final Path folder;
    private final Path database;
    private final String files;
    private @Nullable FileChannel channel;

    /** @param version 0 where the file was written anew since: it begins to count again */
    private record Mark(String columns, long version, FactSum sum, FileEnd end) {
        /** Of one length and shorter than what a disk writes at once, so that it is written over whole or not at all. */
        private byte[] line() {
            // the columns come first, for a later version may have more
            return String.format(
                            Locale.ROOT,
                            "%s %020d %020d %s %020d %s%n",
                            columns,
                            version,
                            sum.facts(),
                            sum.hex(),
                            end.size(),
                            end.like())
                    .getBytes(StandardCharsets.US_ASCII);
        }
    }

    /** @param files by which of its file systems the database writes */
    Acknowledged(Path folder, String files) {
        this.folder = folder;
        this.database = folder.resolve(DataFolder.DATABASE);
        this.files = files;
    }

    /** @throws LedgerException if the database file was written less often than was acknowledged */
    void mustReach(long version) {
        if (read().filter(mark -> mark.version > version).isPresent()) {
            throw missing("its newest pages are damaged, or an older file was laid in its place");
        }
    }

    /** Cuts off what was written after the last answer. */
    void leaveOutWhatNobodyWasAnswered() {
        Optional<FileEnd> end = read().map(Mark::end).filter(one -> one.isWithin(database));
        try {
            if (end.isPresent() && end.get().writtenSince(database) <= OF_ONE_CUT) {
                LOG.info(
                        "The database in {} was cut off while it wrote: {} bytes about which nobody was answered are left out.",
                        folder,
                        Files.size(database) - end.get().size());
                end.get().cut(database);
            }
        } catch (IOException failure) {
            throw new LedgerException(
                    "The folder " + folder + " cannot be used: " + failure.getMessage() + ".", failure);
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

    /** Once that is on the disk; returns when the mark is there as well. */
    void note(long version, FactSum sum) throws IOException {
        write(new Mark(COLUMNS, version, sum, FileEnd.of(database)));
    }

    /** Once the database is closed, which wrote to it. */
    void noteTheEnd() throws IOException {
        Optional<Mark> mark = read();
        if (mark.isPresent()) {
            write(new Mark(mark.get().columns, mark.get().version, mark.get().sum, FileEnd.of(database)));
        }
    }

    /** Before the file is written anew, which keeps its facts and begins to count again. */
    void beginsAnew(Path fresh) throws IOException {
        Optional<Mark> mark = read();
        if (mark.isPresent()) {
            write(new Mark(mark.get().columns, 0, mark.get().sum, FileEnd.of(fresh)));
        }
    }

    /** A new event begins in a folder whose database was moved away. */
    void ofNothing() {
        try {
            Files.deleteIfExists(file());
        } catch (IOException stays) {
            throw new LedgerException("The folder " + folder + " cannot be used: " + stays.getMessage() + ".", stays);
        }
    }

    private Path file() {
        return folder.resolve(FILE);
    }

    /** It stays open, so that no want of open files keeps anybody from an answer. */
    private void write(Mark mark) throws IOException {
        if (channel == null) {
            boolean isNew = !Files.exists(file());
            channel = DataFolder.open(files, file());
            if (isNew) {
                DataFolder.ownerOnly(file());
                DataFolder.forceFolder(folder);
            }
        }
        byte[] line = mark.line();
        channel.write(ByteBuffer.wrap(line), 0);
        if (channel.size() != line.length) {
            channel.truncate(line.length);
        }
        channel.force(false);
    }

    private Optional<Mark> read() {
        try {
            Matcher parts =
                    READ.matcher(Files.exists(file()) ? Files.readString(file(), StandardCharsets.ISO_8859_1) : "");
            return parts.matches()
                    ? Optional.of(new Mark(
                            parts.group(1),
                            Long.parseLong(parts.group(2)),
                            new FactSum(Long.parseLong(parts.group(3)), parts.group(4)),
                            parts.group(5) == null
                                    ? FileEnd.UNKNOWN
                                    : new FileEnd(Long.parseLong(parts.group(5)), parts.group(6))))
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
                + " with what is left here, delete the file " + file() + " and start again.");
    }

    @Override
    public void close() throws IOException {
        if (channel != null) {
            channel.close();
            channel = null;
        }
    }
}
