package tiewright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Which backups were made: one line each in a file of the folder, with its time and place, so that on the day of deletion
 * somebody can be told which files to delete.
 */
final class BackupList {
    private static final String FILE = "backups.txt";
    private static final String DOWNLOADED = "downloaded";

    private BackupList() {}

    /** @param file where it lies; empty if it was downloaded */
    static void note(Path folder, Instant at, Optional<Path> file) {
        Path list = folder.resolve(FILE);
        String line = at + " "
                + file.map(path -> path.toAbsolutePath().normalize().toString()).orElse(DOWNLOADED) + "\n";
        try {
            Files.writeString(list, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            DataFolder.ownerOnly(list);
        } catch (IOException failure) {
            throw new LedgerException(
                    "The backup is made, but " + list + " could not be written: " + failure.getMessage() + ".",
                    failure);
        }
    }

    /** Those noted, oldest first, then those that lie in the folder itself. */
    static List<KnownBackup> of(Path folder) {
        try {
            Path list = folder.resolve(FILE);
            List<KnownBackup> known = new ArrayList<>();
            for (String line : Files.exists(list) ? Files.readAllLines(list) : List.<String>of()) {
                int blank = line.indexOf(' ');
                String where = line.substring(blank + 1);
                known.add(new KnownBackup(
                        Optional.of(Instant.parse(line.substring(0, blank))),
                        where.equals(DOWNLOADED) ? Optional.empty() : Optional.of(Path.of(where))));
            }
            for (Path file : inside(folder)) {
                if (known.stream().noneMatch(one -> one.file().equals(Optional.of(file)))) {
                    known.add(new KnownBackup(Optional.empty(), Optional.of(file)));
                }
            }
            return List.copyOf(known);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Deletes those that lie in the folder itself, with their keys. What lies elsewhere is somebody's to delete by hand. */
    static void deleteInside(Path folder) throws IOException {
        for (Path zip : inside(folder)) {
            Files.deleteIfExists(Backup.keyOf(zip));
            Files.delete(zip);
        }
    }

    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> backups = new ArrayList<>();
            for (Path file : files.filter(one -> one.getFileName().toString().endsWith(".zip"))
                    .sorted()
                    .toList()) {
                if (isBackup(file)) {
                    backups.add(file);
                }
            }
            return backups;
        }
    }

    private static boolean isBackup(Path zip) throws IOException {
        try (InputStream file = Files.newInputStream(zip);
                ZipInputStream entries = new ZipInputStream(file)) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                if (entry.getName().equals(DataFolder.DATABASE)) {
                    return true;
                }
            }
            return false;
        }
    }
}
