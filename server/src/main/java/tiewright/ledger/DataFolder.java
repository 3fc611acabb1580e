package tiewright.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.io.file.PathUtils;
import org.h2.store.fs.FilePath;
import org.jspecify.annotations.Nullable;

/** The folder of one event's data: its files, who may read them, and the lock that keeps a second process out. */
final class DataFolder implements AutoCloseable {
    static final String DATABASE = "tiewright.mv.db";
    static final String KEY = "seal.key";
    private static final String ERASING = "erasing";
    static final String LOCK = "tiewright.lock";
    static final String PART = ".part";

    /** On a disk with less room than this the database cannot be written. */
    private static final long ROOM = 1 << 20;

    private final Path path;
    private final String files;
    private final FileChannel lock;
    private @Nullable FileChannel database;

    private DataFolder(Path path, String files, FileChannel lock) {
        this.path = path;
        this.files = files;
        this.lock = lock;
    }

    /** Makes the folder if it is not there, and takes it for this process. */
    static DataFolder take(Path folder) {
        return take(folder, "file");
    }

    /** @param files by which of its file systems the database writes; one of them may stand between it and the disk */
    static DataFolder take(Path folder, String files) {
        Path path = folder.toAbsolutePath().normalize();
        if (path.toString().contains(";")) {
            throw new LedgerException("The folder " + path + " has a semicolon in its name. Choose another name.");
        }
        try {
            make(path);
            FileChannel lock =
                    FileChannel.open(path.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isTaken(lock)) {
                return new DataFolder(path, files, lock);
            }
            lock.close();
        } catch (IOException e) {
            throw new LedgerException("The folder " + path + " cannot be used: " + e.getMessage() + ".", e);
        }
        throw new LedgerException("The folder " + path
                + " is already open in another Tiewright. Stop that one first, or choose another folder.");
    }

    static boolean holdsEvent(Path folder) {
        return Files.isRegularFile(folder.resolve(DATABASE));
    }

    Path path() {
        return path;
    }

    Path key() {
        return path.resolve(KEY);
    }

    /**
     * Where H2 looks for the database. It shall only ever append: pages that it puts into free space in the middle of its file it does not
     * find again when the process is killed soon after its start, however well they were forced to the disk. It heeds this in the
     * address that opens the file first, so every connection has it.
     */
    String url() {
        return "jdbc:h2:" + files + ":" + path.resolve("tiewright") + ";REUSE_SPACE=FALSE";
    }

    /** Once the database file is there: only its owner may read it, and it can be forced to the disk. */
    void databaseIsThere() throws IOException {
        // Never closed before the database: closing any channel of a file gives up the locks that this process has
        // on it. By the same way as the database writes, so that whatever stands between it and the disk hears of it.
        database = open(files, database());
        ownerOnly(database());
        forceFolder(path);
    }

    /** To be read and written, made where it is not there. */
    static FileChannel open(String files, Path file) throws IOException {
        return FilePath.get(files + ":" + file).open("rw");
    }

    /** What was acknowledged last, as it is noted here. */
    Acknowledged acknowledged() {
        return new Acknowledged(path, files);
    }

    /** Before the database file is moved; {@link #databaseIsThere} after it. */
    void databaseIsClosed() throws IOException {
        if (database != null) {
            database.close();
            database = null;
        }
    }

    /** What of a deletion that was begun may not be finished. */
    ErasingMark erasing() {
        return new ErasingMark(path.resolve(ERASING));
    }

    Path database() {
        return path.resolve(DATABASE);
    }

    /** Bytes of the database file; 0 where there is none yet. */
    long size() {
        return database().toFile().length();
    }

    /** Returns when what was written to the database has reached the disk, as far as the disk tells the truth. */
    void force() throws IOException {
        Optional.ofNullable(database).orElseThrow().force(false);
    }

    @Override
    public void close() {
        try (lock) {
            if (database != null) {
                database.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void ownerOnly(Path file) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString(Files.isDirectory(file) ? "rwx------" : "rw-------"));
        }
    }

    /** What was made or moved in it. Some systems open no folder as a file; it is kept there as well as they keep any. */
    static void forceFolder(Path path) {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            return;
        }
    }

    /** One that is new or empty becomes its owner's alone. */
    static void make(Path path) throws IOException {
        Files.createDirectories(path);
        try (Stream<Path> inside = Files.list(path)) {
            if (inside.findAny().isEmpty()) {
                ownerOnly(path);
            }
        }
    }

    /** Half-made files of a process that was killed. */
    void clearParts() {
        try (Stream<Path> inside = Files.list(path)) {
            for (Path part : inside.filter(one -> one.getFileName().toString().endsWith(PART))
                    .toList()) {
                PathUtils.delete(part);
            }
        } catch (IOException failure) {
            throw new LedgerException("The folder " + path + " cannot be used: " + failure.getMessage() + ".", failure);
        }
    }

    /** Whether this failed because the disk has no room; systems say so in the words of their own. */
    boolean isFull(@Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            String said = String.valueOf(cause.getMessage());
            if (said.contains("No space left") || said.contains("not enough space")) {
                return true;
            }
        }
        return path.toFile().getUsableSpace() < ROOM;
    }

    /** Whether another process, or this one, holds the lock; takes it if not. */
    private static boolean isTaken(FileChannel lock) throws IOException {
        try {
            return lock.tryLock() == null;
        } catch (OverlappingFileLockException inThisProcess) {
            return true;
        }
    }
}
