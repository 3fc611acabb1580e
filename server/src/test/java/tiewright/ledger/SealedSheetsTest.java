package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tiewright.schema.Tables.PRIVATE_SHEET;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Decision.Sealed;
import tiewright.event.Decision.SealedRef;
import tiewright.event.ExchangeFact.SheetSealed;
import tiewright.event.ExchangeFact.SheetsOpened;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PrivateNote.SheetDropped;
import tiewright.event.PrivateNote.SheetKept;
import tiewright.event.Refusal;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.sheet.HandInSheet;
import tiewright.sheet.SealSheet;
import tiewright.sheet.SupplySide;

class SealedSheetsTest {
    private static final ClubId HOME = ClubId.of("H");
    private static final ClubId AWAY = ClubId.of("W");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final String SECRET = "5eadbeef".repeat(8);
    private static final Sheet SHEET = Sheet.of(List.of(
            Optional.of(Pair.of("zq-ann", "zq-bob")), Optional.empty(), Optional.of(Pair.of("zq-cyd", "zq-dee"))));

    @TempDir
    Path place;

    private Path folder;

    @BeforeEach
    void chooseFolder() {
        folder = place.resolve("event");
    }

    private Ledger open() {
        return Ledger.open(folder, Asked.CLOCK);
    }

    private static void seal(Ledger ledger, ClubId club, Sheet sheet, String secret) {
        Decision decision = (event, given) -> new Decision.Accepted(
                List.of(new SheetSealed(SHEETS, club, "0".repeat(64), false)),
                List.of(new SheetKept(SHEETS, club, sheet, secret)));
        assertThat(ledger.decide(Asked.request(UUID.randomUUID().toString()), decision))
                .isInstanceOf(Answer.Done.class);
    }

    @Test
    void a_club_reads_its_own_sheet_and_the_last_one_counts() {
        try (Ledger ledger = open()) {
            seal(ledger, HOME, Sheet.full(Pair.of("zq-x", "zq-y")), SECRET);
            seal(ledger, HOME, SHEET, SECRET);
            assertThat(ledger.ownSheet(SHEETS, HOME)).contains(new Sealed(SHEET, SECRET));
            assertThat(ledger.ownSheet(SHEETS, AWAY)).isEmpty();
            assertThat(ledger.ownSheet(ExchangeId.decider(TieId.of("A1")), HOME))
                    .isEmpty();
        }
        try (Ledger ledger = open()) {
            assertThat(ledger.ownSheet(SHEETS, HOME)).as("after a restart").contains(new Sealed(SHEET, SECRET));
        }
    }

    @Test
    void a_decision_gets_just_the_sheets_it_needs_and_can_drop_them() {
        try (Ledger ledger = open()) {
            seal(ledger, HOME, SHEET, SECRET);
            seal(ledger, AWAY, SHEET, "other");
            AtomicReference<Decision.Given> seen = new AtomicReference<>();
            Decision opening = Asked.reading(Set.of(new SealedRef(SHEETS, HOME)), (event, given) -> {
                seen.set(given);
                Sheet home = given.sealed(SHEETS, HOME).orElseThrow().sheet();
                return new Decision.Accepted(
                        List.of(new SheetsOpened(SHEETS, home, Optional.of(SECRET), SHEET, Optional.empty())),
                        List.of(new SheetDropped(SHEETS, HOME)));
            });
            assertThat(ledger.decide(Asked.request("open"), opening)).isInstanceOf(Answer.Done.class);
            assertThat(seen.get().sealed(SHEETS, HOME)).contains(new Sealed(SHEET, SECRET));
            assertThat(seen.get().sealed(SHEETS, AWAY)).isEmpty();
            assertThat(ledger.ownSheet(SHEETS, HOME)).as("dropped").isEmpty();
            assertThat(ledger.ownSheet(SHEETS, AWAY)).isPresent();
        }
    }

    @Test
    void nothing_of_a_sealed_sheet_stands_in_clear_in_any_file() throws IOException {
        Path backup = place.resolve("backup.zip");
        Path restored = place.resolve("restored");
        try (Ledger ledger = open()) {
            seal(ledger, HOME, Sheet.full(Pair.of("zq-eve", "zq-fay")), SECRET);
            seal(ledger, HOME, SHEET, SECRET);
            assertNowhere(folder);
            ledger.backUp(backup);
        }
        assertNowhere(folder);
        Ledger.restore(backup, restored);
        assertNowhere(restored);

        try (Ledger ledger = open()) {
            ledger.decide(
                    Asked.request("open"),
                    Asked.facts(new SheetsOpened(SHEETS, SHEET, Optional.of(SECRET), SHEET, Optional.empty())));
        }
        assertThat(bytes(folder)).as("the search finds what is opened").anyMatch(text -> text.contains("zq-ann"));
    }

    private static void assertNowhere(Path where) throws IOException {
        List<String> files = bytes(where);
        assertThat(files).as("files with something in them").anyMatch(text -> text.length() > 10_000);
        assertThat(files.stream()
                        .filter(text -> text.contains("zq-") || text.contains(SECRET))
                        .count())
                .isZero();
        assertThat(files.stream().filter(text -> text.contains("z\0q\0-\0")).count())
                .as("as UTF-16")
                .isZero();
    }

    private static List<String> bytes(Path where) throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.walk(where)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.add(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return texts;
    }

    @Test
    void every_ciphertext_has_one_length_and_a_nonce_of_its_own() {
        Set<String> nonces = new HashSet<>();
        Set<Integer> lengths = new HashSet<>();
        SealedRef where = new SealedRef(SHEETS, HOME);
        try (Store store = Store.open(folder)) {
            for (int rubbers = 1; rubbers <= 12; rubbers++) {
                Sheet sheet = Sheet.of(
                        Collections.nCopies(rubbers, Optional.of(Pair.of("a".repeat(rubbers), "選".repeat(40)))));
                store.write(
                        Asked.forClub(HOME, "k" + rubbers),
                        List.of(new SheetKept(SHEETS, HOME, sheet, SECRET)),
                        new Changes(Map.of(), "captain", Asked.NINE));
                assertThat(store.open(Set.of(where)).sheets().get(where).sheet())
                        .isEqualTo(sheet);
                nonces.add(store.jooq()
                        .fetchValue(store.jooq().select(PRIVATE_SHEET.NONCE).from(PRIVATE_SHEET)));
                lengths.add(store.jooq()
                        .fetchValue(
                                store.jooq().select(PRIVATE_SHEET.CIPHERTEXT).from(PRIVATE_SHEET))
                        .length());
            }
        }
        assertThat(nonces).hasSize(12);
        assertThat(lengths).hasSize(1);
    }

    /** Whoever can write in the database must not be able to pass one club's sheet off as another's. */
    @Test
    void a_ciphertext_opens_only_in_its_own_place_and_unchanged() {
        try (Ledger ledger = open()) {
            seal(ledger, HOME, SHEET, SECRET);
            seal(ledger, AWAY, SHEET, SECRET);
        }
        try (Store store = Store.open(folder)) {
            store.jooq()
                    .deleteFrom(PRIVATE_SHEET)
                    .where(PRIVATE_SHEET.CLUB.eq("W"))
                    .execute();
            store.jooq().update(PRIVATE_SHEET).set(PRIVATE_SHEET.CLUB, "W").execute();
        }
        try (Ledger ledger = open()) {
            assertThat(ledger.ownSheet(SHEETS, AWAY))
                    .as("moved to another club")
                    .isEmpty();
            assertThat(ledger.unreadableSheets()).containsExactly(new SealedRef(SHEETS, AWAY));
        }
    }

    @Test
    void without_its_key_a_sheet_must_be_sealed_again_and_the_refusal_says_so() throws IOException {
        try (Ledger ledger = open()) {
            seal(ledger, HOME, SHEET, SECRET);
        }
        Files.delete(folder.resolve("seal.key"));
        try (Ledger ledger = open()) {
            Decision opening = Asked.reading(
                    Set.of(new SealedRef(SHEETS, HOME)),
                    (event, given) -> Decision.Refused.because(Refusal.of("sheet.missing")
                            .with("sheets", given.sealed().size())));
            assertThat(ledger.decide(Asked.request("open"), opening))
                    .isEqualTo(new Answer.Refused(List.of(
                            Refusal.of("ledger.sheet-unreadable")
                                    .with("club", HOME)
                                    .with("tie", TieId.of("A1")),
                            Refusal.of("sheet.missing").with("sheets", 0))));
            seal(ledger, HOME, SHEET, "again");
            assertThat(ledger.ownSheet(SHEETS, HOME)).contains(new Sealed(SHEET, "again"));
            assertThat(ledger.unreadableSheets()).isEmpty();
        }
    }

    @Test
    void a_damaged_key_is_not_replaced_silently() throws IOException {
        open().close();
        Files.write(folder.resolve("seal.key"), new byte[31]);
        assertThatThrownBy(this::open)
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("is damaged: it has 31 bytes instead of 32");
        assertThat(Files.size(folder.resolve("seal.key"))).isEqualTo(31);
    }

    @Test
    void only_the_owner_may_read_the_files() throws IOException {
        open().close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        for (String file : List.of("seal.key", "tiewright.mv.db")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(file))))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void printing_a_sheet_by_mistake_tells_nothing() {
        String printed = "" + new Sealed(SHEET, SECRET) + new SheetKept(SHEETS, HOME, SHEET, SECRET)
                + new Decision.Accepted(List.of(), List.of(new SheetKept(SHEETS, HOME, SHEET, SECRET)))
                + new SealSheet(SHEETS, HOME, SHEET, SECRET) + new HandInSheet(SHEETS, HOME, SHEET, SECRET)
                + new SupplySide(SHEETS, HOME, SHEET, "late", "Ref");
        assertThat(printed).doesNotContain("zq-").doesNotContain(SECRET).contains("A1");
    }
}
