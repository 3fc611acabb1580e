package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Decision.Sealed;
import tiewright.event.Decision.SealedRef;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.PrivateNote.SheetKept;
import tiewright.event.SetUpFact.ClubEntered;
import tiewright.event.Sheet;
import tiewright.event.TieId;

class BackupTest {
    private static final ClubId HOME = ClubId.of("H");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final Sealed SHEET = new Sealed(Sheet.full(Pair.of("a", "b")), "secret");
    private static final PersonNamed ANA = new PersonNamed(PlayerId.of("a"), "Ana", OptionalInt.empty());

    @TempDir
    Path place;

    private Ledger begun() {
        Ledger ledger = Ledger.open(place.resolve("event"), Asked.CLOCK);
        List<PrivateNote> notes = List.of(ANA, new SheetKept(SHEETS, HOME, SHEET.sheet(), SHEET.secret()));
        Decision decision = (event, given) -> new Decision.Accepted(ExampleFacts.all(), notes);
        ledger.decide(Asked.request("all"), decision);
        return ledger;
    }

    @Test
    void the_service_goes_on_from_a_backup_with_its_key() {
        Path zip = place.resolve("out/backup.zip");
        try (Ledger ledger = begun()) {
            ledger.backUp(zip, true);
            ledger.decide(
                    Asked.request("later"),
                    Asked.facts(new ClubEntered(ClubId.of("L"), "Late", Optional.empty(), OptionalInt.empty())));
            Path second = place.resolve("second");

            Restored restored = Ledger.restore(zip, Optional.of(place.resolve("out/backup.zip.key")), second);

            assertThat(restored).isEqualTo(new Restored(ExampleFacts.all().size(), List.of()));
            try (Ledger again = Ledger.open(second, Asked.CLOCK)) {
                assertThat(again.facts(0))
                        .isEqualTo(ledger.facts(0).subList(0, ExampleFacts.all().size()));
                assertThat(again.event())
                        .isEqualTo(ledger.asOf(ExampleFacts.all().size()));
                assertThat(again.directory()).isEqualTo(ledger.directory());
                assertThat(again.ownSheet(SHEETS, HOME)).contains(SHEET);
                Answer sameKey = again.decide(Asked.request("all"), Asked.facts(List.of()));
                assertThat(((Answer.Done) sameKey).again()).isTrue();
                Answer more = again.decide(
                        Asked.request("more"),
                        Asked.facts(new ClubEntered(ClubId.of("M"), "More", Optional.empty(), OptionalInt.empty())));
                assertThat(((Answer.Done) more).facts().get(0).seq())
                        .isEqualTo(ExampleFacts.all().size() + 1);
            }
        }
    }

    @Test
    void without_the_key_the_clubs_that_must_seal_again_are_named() {
        Path zip = place.resolve("backup.zip");
        try (Ledger ledger = begun()) {
            ledger.backUp(zip);
        }
        Restored restored = Ledger.restore(zip, place.resolve("second"));
        assertThat(restored.mustSealAgain()).containsExactly(new SealedRef(SHEETS, HOME));
        try (Ledger again = Ledger.open(place.resolve("second"), Asked.CLOCK)) {
            assertThat(again.ownSheet(SHEETS, HOME)).isEmpty();
            assertThat(again.facts(0)).hasSameSizeAs(ExampleFacts.all());
        }
    }

    @Test
    void a_backup_never_holds_the_key() throws IOException {
        Path zip = place.resolve("backup.zip");
        try (Ledger ledger = begun()) {
            ledger.backUp(zip);
            byte[] key = Files.readAllBytes(ledger.folder().resolve("seal.key"));
            try (ZipFile file = new ZipFile(zip.toFile())) {
                assertThat(file.stream().map(Object::toString)).containsExactly("tiewright.mv.db");
                byte[] inside =
                        file.getInputStream(file.entries().nextElement()).readAllBytes();
                assertThat(text(inside)).doesNotContain(text(key));
            }
            assertThat(zip.resolveSibling("backup.zip.key")).doesNotExist();
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(zip)))
                    .isEqualTo("rw-------");
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    @Test
    void nothing_is_overwritten() throws IOException {
        Path zip = place.resolve("backup.zip");
        try (Ledger ledger = begun()) {
            ledger.backUp(zip);
            byte[] first = Files.readAllBytes(zip);
            assertThatThrownBy(() -> ledger.backUp(zip))
                    .isInstanceOf(LedgerException.class)
                    .hasMessage("The file " + zip + " is already there. Choose another name for the backup.");
            assertThat(Files.readAllBytes(zip)).isEqualTo(first);
            assertThatThrownBy(() -> Ledger.restore(zip, ledger.folder()))
                    .isInstanceOf(LedgerException.class)
                    .hasMessage(
                            "The folder " + ledger.folder() + " is not empty. Restore into a new or an empty folder.");
            assertThat(ledger.ownSheet(SHEETS, HOME)).contains(SHEET);
        }
    }

    @Test
    void a_file_that_is_no_backup_is_refused_with_a_sentence() throws IOException {
        Path file = Files.writeString(place.resolve("letter.txt"), "Dear captain");
        assertThatThrownBy(() -> Ledger.restore(file, place.resolve("second")))
                .isInstanceOf(LedgerException.class)
                .hasMessage("The file " + file + " is no backup of Tiewright. Choose another file.");
        assertThat(place.resolve("second")).doesNotExist();
        assertThatThrownBy(() -> Ledger.restore(place.resolve("nowhere.zip"), place.resolve("second")))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("nowhere.zip could not be restored");
    }

    /** Entries of an archive that lead out of the folder; common practice, no source. */
    @Test
    void nothing_of_a_backup_is_laid_outside_the_folder() throws IOException {
        Path zip = place.resolve("backup.zip");
        try (Ledger ledger = begun()) {
            ledger.backUp(zip);
        }
        byte[] database;
        try (ZipFile file = new ZipFile(zip.toFile())) {
            database = file.getInputStream(file.entries().nextElement()).readAllBytes();
        }
        Path bad = place.resolve("bad.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(bad))) {
            for (String name : List.of(
                    "../out.txt", "/tmp/out.txt", "..\\out.txt", "../tiewright.mv.db", "seal.key", "tiewright.mv.db")) {
                out.putNextEntry(new ZipEntry(name));
                out.write(name.equals("tiewright.mv.db") ? database : new byte[32]);
                out.closeEntry();
            }
        }
        Path inner = place.resolve("a/b/second");
        assertThat(Ledger.restore(bad, inner).facts())
                .isEqualTo(ExampleFacts.all().size());
        try (Stream<Path> all = Files.walk(place.resolve("a"))) {
            assertThat(all.filter(Files::isRegularFile)
                            .map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("tiewright.mv.db", "tiewright.lock", "seal.key", "acknowledged.txt");
        }
        assertThat(Files.readAllBytes(inner.resolve("seal.key")))
                .as("a key of its own")
                .isNotEqualTo(new byte[32]);
    }

    @Test
    void a_backup_taken_while_facts_come_in_holds_whole_decisions() throws Exception {
        AtomicBoolean enough = new AtomicBoolean();
        Path zip = place.resolve("backup.zip");
        try (Ledger ledger = begun()) {
            Thread busy = new Thread(() -> {
                for (int i = 0; !enough.get(); i++) {
                    ClubId club = ClubId.of("c" + i);
                    ledger.decide(
                            Asked.request("busy" + i),
                            Asked.facts(
                                    new ClubEntered(club, "one", Optional.empty(), OptionalInt.empty()),
                                    new ClubEntered(club, "two", Optional.empty(), OptionalInt.empty())));
                }
            });
            busy.start();
            while (ledger.event().seq() < ExampleFacts.all().size() + 20) {
                Thread.onSpinWait();
            }
            ledger.backUp(zip);
            enough.set(true);
            busy.join();
            long facts = Ledger.restore(zip, place.resolve("second")).facts();
            assertThat(facts)
                    .isGreaterThanOrEqualTo(ExampleFacts.all().size() + 20)
                    .isLessThanOrEqualTo(ledger.event().seq());
            try (Ledger second = Ledger.open(place.resolve("second"), Asked.CLOCK)) {
                assertThat(second.facts(0)).isEqualTo(ledger.facts(0).subList(0, (int) facts));
                assertThat((facts - ExampleFacts.all().size()) % 2)
                        .as("both facts of a decision or none")
                        .isZero();
            }
        }
    }
}
