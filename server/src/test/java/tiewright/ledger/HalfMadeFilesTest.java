package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.SetUpFact.ClubEntered;

/** Files that somebody or something has left by half: each is told in a sentence with a way out, and nothing of it is lost. */
class HalfMadeFilesTest {
    @TempDir
    Path place;

    private Path anEvent() {
        Path folder = place.resolve("event");
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            for (int i = 0; i < 40; i++) {
                ledger.decide(
                        Asked.request("k" + i),
                        Asked.facts(new ClubEntered(
                                ClubId.of("C" + i), "Club " + i, Optional.empty(), OptionalInt.empty())));
            }
        }
        return folder;
    }

    private static void assertRefused(Path folder, String... said) {
        assertThatThrownBy(() -> Ledger.open(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContainingAll(said)
                .message()
                .doesNotContain("org.h2", "MVStore", "Exception", "[9", "SQL");
    }

    private static String rights(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void an_empty_database_file_begins_no_new_event() throws IOException {
        Path folder = anEvent();
        Files.write(folder.resolve("tiewright.mv.db"), new byte[0]);
        assertRefused(folder, "tiewright.mv.db is empty", "restore", "move the empty file away");
        assertThat(Files.size(folder.resolve("tiewright.mv.db"))).isZero();
        Files.delete(folder.resolve("tiewright.mv.db"));
        Ledger.open(folder, Asked.CLOCK).close();
    }

    @Test
    void a_damaged_database_file_is_told_and_left_as_it_is() throws IOException {
        Path folder = anEvent();
        Path file = folder.resolve("tiewright.mv.db");
        byte[] whole = Files.readAllBytes(file);
        byte[] noHeader = whole.clone();
        Arrays.fill(noHeader, 0, 8192, (byte) 7);
        byte[] noPages = whole.clone();
        Arrays.fill(noPages, 8192, noPages.length, (byte) 7);
        byte[] other = "not a database, but somebody's letter".repeat(1000).getBytes(StandardCharsets.US_ASCII);
        for (byte[] damaged : new byte[][] {noHeader, noPages, other}) {
            Files.write(file, damaged);
            assertRefused(folder, "is damaged or not one of Tiewright's", "restore", "Keep this folder");
            assertThat(Files.readAllBytes(file)).as("left as it was").isEqualTo(damaged);
        }
        Files.write(file, whole);
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.facts(0)).hasSize(40);
        }
    }

    @Test
    void a_refused_restore_leaves_the_folder_free_for_the_next() throws IOException {
        Path folder = anEvent();
        Path good = place.resolve("good.zip");
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            ledger.backUp(good);
        }
        byte[] whole = Files.readAllBytes(good);
        Path cut = Files.write(place.resolve("cut.zip"), Arrays.copyOf(whole, whole.length / 2));
        Path spare = place.resolve("spare");
        assertThatThrownBy(() -> Ledger.restore(cut, spare)).isInstanceOf(LedgerException.class);
        assertThat(names(spare)).isEmpty();
        Files.write(spare.resolve("restoring.part"), new byte[5]);
        assertThat(Ledger.restore(good, spare).facts())
                .as("also after one that was killed")
                .isEqualTo(40);
        assertThat(names(spare)).doesNotContain("restoring.part");
    }

    @Test
    void a_backup_is_for_its_owner_only_and_what_a_killed_one_left_goes_at_the_next_start() throws IOException {
        Path folder = anEvent();
        Path zip = place.resolve("copies").resolve("day.zip");
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            ledger.backUp(zip);
            assertThat(ledger.backedUp()).isNotEmpty();
        }
        assertThat(rights(zip)).isEqualTo("rw-------");
        assertThat(names(zip.getParent())).containsExactly("day.zip");
        Files.write(folder.resolve("backup123.part"), new byte[9]);
        Ledger.open(folder, Asked.CLOCK).close();
        assertThat(names(folder)).noneMatch(name -> name.endsWith(".part"));
    }

    @Test
    void a_folder_that_was_there_and_empty_becomes_its_owners_alone() throws IOException {
        Path folder = Files.createDirectory(
                place.resolve("made before"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
        Ledger.open(folder, Asked.CLOCK).close();
        assertThat(rights(folder)).isEqualTo("rwx------");
    }
}
