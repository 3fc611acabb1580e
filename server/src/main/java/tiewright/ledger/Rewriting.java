package tiewright.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.MVStoreException;

/**
 * Writes a database file anew with nothing in it but what is in use: deleted rows stay readable in old pages until these are
 * written over. The new file stands beside the old one until it is whole and on the disk, then takes its place in one step.
 */
final class Rewriting {
    private static final String FRESH = "rewriting";

    private Rewriting() {}

    /** @param database must not be open */
    static void rewrite(Path database) throws IOException {
        Path folder = Objects.requireNonNull(database.toAbsolutePath().getParent());
        clear(folder);
        // in a folder of its own, which nobody else may enter: the tool makes the file as the system makes files
        Path room = folder.resolve(FRESH);
        Path fresh = room.resolve("tiewright.mv.db");
        try (Acknowledged mark = new Acknowledged(folder, "file")) {
            DataFolder.make(room);
            MVStore.compact(database.toString(), fresh.toString(), false, null);
            force(fresh);
            mark.beginsAnew(fresh);
            Files.move(fresh, database, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            DataFolder.forceFolder(folder);
        } catch (MVStoreException unreadable) {
            throw new IOException(unreadable.getMessage(), unreadable);
        } finally {
            clear(folder);
        }
    }

    /** What a rewriting that was cut off has left. */
    private static void clear(Path folder) throws IOException {
        List<Path> left;
        try (Stream<Path> all = Files.walk(folder, 2)) {
            left = all.filter(one -> folder.relativize(one).startsWith(FRESH) || isOfEarlierVersion(folder, one))
                    .sorted(Comparator.reverseOrder())
                    .toList();
        }
        for (Path file : left) {
            Files.delete(file);
        }
    }

    /** Earlier versions wrote beside the database. */
    private static boolean isOfEarlierVersion(Path folder, Path file) {
        return folder.equals(file.getParent()) && file.getFileName().toString().startsWith(FRESH + ".");
    }

    private static void force(Path path) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }
}
