package tiewright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Copies of a folder. A backup holds the database and never the key of the sealed sheets, so that whoever finds one reads
 * no sheet; the key goes to a second file, and only when asked for.
 */
final class Backup {
    private static final String UNPACKING = "restoring" + DataFolder.PART;
    private static final List<String> OURS =
            List.of(UNPACKING, DataFolder.DATABASE, DataFolder.KEY, DataFolder.LOCK, Acknowledged.FILE);

    private Backup() {}

    /** The file of the key that belongs to this backup. */
    static Path keyOf(Path zip) {
        return zip.resolveSibling(zip.getFileName() + ".key");
    }

    static void write(Store store, Path zip, boolean withKey, Instant at) {
        Path target = zip.toAbsolutePath();
        refuseExisting(target);
        if (withKey) {
            refuseExisting(keyOf(target));
        }
        try {
            Files.createDirectories(target.getParent());
            copy(store, target, at);
            if (withKey) {
                Seal.writeKey(keyOf(target), Seal.readKey(store.folder().key()));
            }
        } catch (IOException e) {
            throw new LedgerException("The backup " + target + " could not be written: " + e.getMessage() + ".", e);
        }
    }

    /** The same in memory. */
    static byte[] bytes(Store store) {
        try {
            Path part = part(store);
            try {
                store.copyTo(part);
                return Files.readAllBytes(part);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new LedgerException("The backup could not be made: " + e.getMessage() + ".", e);
        }
    }

    /** The file appears whole or not at all, and only its owner may read it. */
    private static void copy(Store store, Path target, Instant at) throws IOException {
        Path part = part(store);
        try {
            store.copyTo(part);
            BackupList.note(store.folder().path(), at, Optional.of(target));
            Files.move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** In the data folder, which nobody else may enter: if the process is killed, the next start deletes it. */
    private static Path part(Store store) throws IOException {
        return Files.createTempFile(store.folder().path(), "backup", DataFolder.PART);
    }

    static Restored restore(Path zip, Optional<Path> key, Path folder) {
        Path target = folder.toAbsolutePath().normalize();
        refuseNotEmpty(target);
        try {
            Optional<byte[]> keyBytes = key.isPresent() ? Optional.of(Seal.readKey(key.get())) : Optional.empty();
            unpack(zip, target);
            if (keyBytes.isPresent()) {
                Seal.writeKey(target.resolve(DataFolder.KEY), keyBytes.get());
            }
            return looked(target);
        } catch (IOException e) {
            clear(target);
            throw new LedgerException(
                    "The backup " + zip + " could not be restored: " + e.getMessage()
                            + ". It may be damaged; nothing of it was left behind, so another can be restored into the same folder.",
                    e);
        } catch (LedgerException e) {
            clear(target);
            throw e;
        }
    }

    /** Opened once: what cannot be read is better known now than in the hall. */
    private static Restored looked(Path folder) {
        try (Ledger restored = Ledger.open(folder, Clock.systemUTC())) {
            return new Restored(restored.event().seq(), restored.unreadableSheets());
        }
    }

    /** What a refused restore has laid down would block the next. */
    private static void clear(Path folder) {
        try {
            for (String file : OURS) {
                Files.deleteIfExists(folder.resolve(file));
            }
        } catch (IOException stays) {
            throw new LedgerException(
                    "The folder " + folder + " holds half a backup: delete it, then try again.", stays);
        }
    }

    private static void unpack(Path zip, Path folder) throws IOException {
        try (InputStream file = Files.newInputStream(zip);
                ZipInputStream entries = new ZipInputStream(file)) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                if (entry.getName().equals(DataFolder.DATABASE)) {
                    DataFolder.make(folder);
                    Files.copy(entries, folder.resolve(UNPACKING), StandardCopyOption.REPLACE_EXISTING);
                    Files.move(folder.resolve(UNPACKING), folder.resolve(DataFolder.DATABASE));
                    return;
                }
            }
        }
        throw new LedgerException("The file " + zip + " is no backup of Tiewright. Choose another file.");
    }

    private static void refuseExisting(Path file) {
        if (Files.exists(file)) {
            throw new LedgerException("The file " + file + " is already there. Choose another name for the backup.");
        }
    }

    private static void refuseNotEmpty(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            if (inside.allMatch(one -> one.getFileName().toString().equals(UNPACKING))) {
                return;
            }
        } catch (IOException e) {
            throw new LedgerException("The folder " + folder + " cannot be used: " + e.getMessage() + ".", e);
        }
        throw new LedgerException("The folder " + folder + " is not empty. Restore into a new or an empty folder.");
    }
}
