package tiewright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Copies of a folder. A backup holds the database and never the key of the sealed sheets, so that whoever finds one reads
 * no sheet; the key goes to a second file, and only when asked for.
 */
final class Backup {
    private Backup() {}

    /** The file of the key that belongs to this backup. */
    static Path keyOf(Path zip) {
        return zip.resolveSibling(zip.getFileName() + ".key");
    }

    static void write(Store store, Path zip, boolean withKey) {
        Path target = zip.toAbsolutePath();
        refuseExisting(target);
        if (withKey) {
            refuseExisting(keyOf(target));
        }
        try {
            Files.createDirectories(target.getParent());
            copy(store, target);
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
            Path folder = Files.createTempDirectory("tiewright-backup");
            Path zip = folder.resolve("backup.zip");
            try {
                copy(store, zip);
                return Files.readAllBytes(zip);
            } finally {
                Files.deleteIfExists(zip);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new LedgerException("The backup could not be made: " + e.getMessage() + ".", e);
        }
    }

    /** The file appears whole or not at all, and only its owner may read it. */
    private static void copy(Store store, Path target) throws IOException {
        Path part = Files.createTempFile(target.getParent(), "backup", ".part");
        try {
            store.copyTo(part);
            Files.move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
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
        } catch (IOException e) {
            throw new LedgerException("The backup " + zip + " could not be restored: " + e.getMessage() + ".", e);
        }
        // Opened once: what cannot be read is better known now than in the hall.
        try (Ledger restored = Ledger.open(target, Clock.systemUTC())) {
            return new Restored(restored.event().seq(), restored.unreadableSheets());
        }
    }

    private static void unpack(Path zip, Path folder) throws IOException {
        try (InputStream file = Files.newInputStream(zip);
                ZipInputStream entries = new ZipInputStream(file)) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                if (entry.getName().equals(DataFolder.DATABASE)) {
                    DataFolder.make(folder);
                    Files.copy(entries, folder.resolve(DataFolder.DATABASE));
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
            if (inside.findAny().isEmpty()) {
                return;
            }
        } catch (IOException e) {
            throw new LedgerException("The folder " + folder + " cannot be used: " + e.getMessage() + ".", e);
        }
        throw new LedgerException("The folder " + folder + " is not empty. Restore into a new or an empty folder.");
    }
}
