package tiewright.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.stream.Stream;
import org.h2.mvstore.MVStoreException;
import org.h2.mvstore.MVStoreTool;

/**
 * Writes a database file anew with nothing in it but what is in use: deleted rows stay readable in old pages until these are
 * written over. The new file stands beside the old one until it is whole and on the disk, then takes its place in one step.
 */
final class Rewriting {
    private static final String FRESH = "rewriting";

    private Rewriting() {}

    /** @param database must not be open */
    static void rewrite(Path database) throws IOException {
        Path folder = database.toAbsolutePath().getParent();
        clear(folder);
        Path fresh = folder.resolve(FRESH + ".mv.db");
        try {
            Files.copy(database, fresh);
            DataFolder.ownerOnly(fresh);
            MVStoreTool.compact(fresh.toString(), false);
            DataFolder.ownerOnly(fresh);
            force(fresh, StandardOpenOption.WRITE);
            Files.move(fresh, database, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            forceFolder(folder);
        } catch (MVStoreException unreadable) {
            throw new IOException(unreadable.getMessage(), unreadable);
        } finally {
            clear(folder);
        }
    }

    /** What a rewriting that was cut off has left. */
    private static void clear(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(one -> one.getFileName().toString().startsWith(FRESH))
                    .toList()) {
                Files.delete(file);
            }
        }
    }

    private static void force(Path path, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }

    /** Some systems open no folder as a file; the move is kept there as well as they keep any. */
    private static void forceFolder(Path folder) {
        try {
            force(folder, StandardOpenOption.READ);
        } catch (IOException notHere) {
            return;
        }
    }
}
