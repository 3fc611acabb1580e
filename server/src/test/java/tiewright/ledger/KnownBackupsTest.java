package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which copies somebody must be told of on the day of deletion. */
class KnownBackupsTest {
    @TempDir
    Path place;

    private Path zip(Path file, String entry) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("about.txt"));
            zip.putNextEntry(new ZipEntry(entry));
        }
        return file;
    }

    @Test
    void those_noted_come_first_and_then_those_that_only_lie_in_the_folder() throws IOException {
        Path folder = place.resolve("event");
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            Path noted = folder.resolve("noted.zip");
            Path elsewhere = place.resolve("elsewhere.zip");
            ledger.backUp(noted);
            ledger.backUp(elsewhere);
            BackupList.note(folder, Asked.NINE, Optional.empty());
            Path laid = zip(folder.resolve("laid.zip"), DataFolder.DATABASE);
            zip(folder.resolve("pictures.zip"), "court.png");
            zip(place.resolve("outside.zip"), DataFolder.DATABASE);
            assertThat(ledger.backups())
                    .containsExactly(
                            new KnownBackup(Optional.of(Asked.NINE), Optional.of(noted)),
                            new KnownBackup(Optional.of(Asked.NINE), Optional.of(elsewhere)),
                            new KnownBackup(Optional.of(Asked.NINE), Optional.empty()),
                            new KnownBackup(Optional.empty(), Optional.of(laid)));
            assertThat(ledger.backups()).extracting(KnownBackup::isThere).containsExactly(true, true, false, true);
        }
        BackupList.deleteInside(folder);
        assertThat(folder.resolve("noted.zip")).doesNotExist();
        assertThat(folder.resolve("laid.zip")).doesNotExist();
        assertThat(folder.resolve("pictures.zip")).exists();
        assertThat(place.resolve("elsewhere.zip")).exists();
        assertThat(BackupList.of(folder)).extracting(KnownBackup::isThere).containsExactly(false, true, false);
    }

    @Test
    void a_folder_holds_an_event_from_its_first_opening_on() {
        Path folder = place.resolve("event");
        assertThat(Ledger.isIn(folder)).isFalse();
        Ledger.open(folder, Asked.CLOCK).close();
        assertThat(Ledger.isIn(folder)).isTrue();
    }
}
