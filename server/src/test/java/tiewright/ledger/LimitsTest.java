package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.IntStream;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Decision.Sealed;
import tiewright.event.Decision.SealedRef;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.PrivateNote.SheetKept;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact.ClubEntered;
import tiewright.event.SetUpFact.CourtSet;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** What the ledger takes and keeps just at its limits, and one beyond. */
class LimitsTest {
    @TempDir
    Path folder;

    private Ledger open() {
        return Ledger.open(folder, Asked.CLOCK);
    }

    private static ClubEntered club(String code) {
        return new ClubEntered(ClubId.of(code), "Club", Optional.empty(), OptionalInt.empty());
    }

    private static Actor named(String name, String device) {
        return new Actor(Role.DESK, Optional.empty(), name, device);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0, 0, true",
        "80, 200, 80, true",
        "0, 9, 9, false",
        "81, 9, 9, false",
        "9, 201, 9, false",
        "9, 9, 81, false"
    })
    void a_request_has_a_key_a_name_and_a_device_of_some_length(int key, int name, int device, boolean fits) {
        for (Runnable made : List.<Runnable>of(
                () -> Request.of("k".repeat(key), named("n".repeat(name), "d".repeat(device))),
                () -> PrivateRequest.of(
                        ClubId.of("N"), "k".repeat(key), named("n".repeat(name), "d".repeat(device))))) {
            if (fits) {
                made.run();
            } else {
                assertThatThrownBy(made::run)
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageContaining(" characters, not ");
            }
        }
    }

    @Test
    void facts_are_asked_for_from_any_number_on() {
        try (Ledger ledger = open()) {
            ledger.decide(Asked.request("k"), Asked.facts(club("A"), club("B")));
            assertThat(ledger.facts(-1)).hasSize(2);
            assertThat(ledger.facts(2)).isEmpty();
            assertThat(ledger.asOf(2)).isEqualTo(ledger.event());
            assertThatThrownBy(() -> ledger.asOf(-1)).hasMessage("there is no fact -1, the last is 2");
        }
    }

    @Test
    void a_name_as_long_as_its_column_is_kept_and_a_longer_one_refused() {
        PlayerId player = PlayerId.of("p");
        try (Ledger ledger = open()) {
            int longest =
                    tiewright.schema.Tables.PRIVATE_PERSON.NAME.getDataType().length();
            PersonNamed fits = new PersonNamed(player, "x".repeat(longest), OptionalInt.empty());
            PersonNamed longer = new PersonNamed(player, "y".repeat(longest + 1), OptionalInt.empty());
            assertThat(ledger.decide(Asked.request("a"), Asked.notes(fits))).isInstanceOf(Answer.Done.class);
            assertThat(ledger.decide(Asked.request("b"), Asked.notes(longer)))
                    .isEqualTo(new Answer.Refused(List.of(Refusal.of("ledger.too-long")
                            .with("longest", longest)
                            .with("length", longest + 1)
                            .at("name"))));
            assertThat(ledger.directory().name(player)).isEqualTo(fits.person().name());
        }
    }

    @Test
    void a_sheet_is_sealed_as_long_as_it_fits_into_the_one_length_of_all() throws IOException {
        Seal seal = Seal.withKeyIn(Files.createDirectories(folder).resolve("key"));
        SealedRef where = new SealedRef(ExchangeId.sheets(TieId.of("A1")), ClubId.of("N"));
        Sheet sheet = Sheet.full(Pair.of("a", "b"));
        int room = Seal.PADDED - 2 - 1 - sheet.canonical().length(); // the length, a line feed
        Sealed fits = new Sealed(sheet, "s".repeat(room));
        assertThat(seal.open(where, seal.close(where, fits))).contains(fits);
        assertThatThrownBy(() -> seal.close(where, new Sealed(sheet, "s".repeat(room + 1))))
                .hasMessage("the sheet is too long to be sealed: " + (Seal.PADDED - 1) + " bytes");
    }

    /** Without closing it in between: what failed holds nothing open that the next answer would bring along. */
    @Test
    void after_a_decision_that_broke_half_way_the_same_key_is_free_at_once() {
        CourtSet unkeepable = new CourtSet("1", Optional.of(LocalTime.of(9, 0, 0, 1)), Optional.empty(), true);
        try (Ledger ledger = open()) {
            Decision breaks = Asked.facts(club("A"), unkeepable);
            assertThatThrownBy(() -> ledger.decide(Asked.request("k"), breaks))
                    .hasMessageContaining("cannot be kept as it is");
            assertThat(ledger.decide(Asked.request("k"), Asked.facts(club("B"))))
                    .isInstanceOfSatisfying(
                            Answer.Done.class, done -> assertThat(done.again()).isFalse());
        }
        try (Ledger ledger = open()) {
            assertThat(ledger.event().clubs()).containsOnlyKeys(ClubId.of("B"));
        }
    }

    @Test
    void a_closed_ledger_says_so() {
        Ledger ledger = open();
        ledger.close();
        assertThatThrownBy(() -> ledger.decide(Asked.request("k"), Asked.facts(club("A"))))
                .isInstanceOf(LedgerException.class)
                .hasMessage("The ledger is closed.");
    }

    @Test
    void who_listens_has_heard_everything_when_the_ledger_is_closed() {
        List<Long> heard = new CopyOnWriteArrayList<>();
        try (Ledger ledger = open()) {
            ledger.onChange(event -> {
                Event.of(ledger.facts(0)); // takes its time
                heard.add(event.seq());
            });
            for (int i = 1; i <= 50; i++) {
                ledger.decide(Asked.request("k" + i), Asked.facts(club("C" + i)));
            }
        }
        assertThat(heard)
                .isEqualTo(IntStream.rangeClosed(1, 50).mapToObj(Long::valueOf).toList());
    }

    @Test
    void its_threads_keep_no_program_alive() {
        try (Ledger ledger = open()) {
            ledger.onChange(event -> {});
            ledger.decide(Asked.request("k"), Asked.facts(club("A")));
            assertThat(Thread.getAllStackTraces().keySet().stream()
                            .filter(thread -> thread.getName().startsWith("tiewright-")))
                    .isNotEmpty()
                    .allMatch(Thread::isDaemon);
        }
    }

    @Test
    void an_interrupted_caller_closes_the_database_whole() {
        Ledger ledger = open();
        ledger.decide(Asked.request("k"), Asked.facts(club("A")));
        Thread.currentThread().interrupt();
        ledger.close();
        assertThat(Thread.interrupted()).as("the interrupt is still there").isTrue();
        try (Ledger again = open()) {
            assertThat(again.facts(0)).hasSize(1);
        }
    }

    /** H2 answers a commit before it is written unless it is told to write at once. */
    @Test
    void the_database_writes_before_it_answers() {
        try (Store store = Store.open(folder)) {
            assertThat(store.jooq()
                            .select(DSL.field("setting_value", String.class))
                            .from("information_schema.settings")
                            .where("setting_name = 'WRITE_DELAY'")
                            .fetch(row -> row.value1()))
                    .contains("0")
                    .doesNotContain("500");
        }
    }

    @Test
    void lists_and_marks_beside_the_database_are_their_owners_alone() throws IOException {
        try (Ledger ledger = open()) {
            ledger.decide(Asked.request("k"), Asked.facts(club("A")));
            ledger.backUp(folder.resolve("one.zip"));
        }
        for (String file : List.of("acknowledged.txt", "backups.txt")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(file))))
                    .as(file)
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void a_backup_with_a_key_overwrites_no_key_and_leaves_no_half() throws IOException {
        Path zip = folder.resolve("one.zip");
        try (Ledger ledger = open()) {
            Path key = Files.writeString(Backup.keyOf(zip), "somebody's");
            assertThatThrownBy(() -> ledger.backUp(zip, true))
                    .hasMessage("The file " + key + " is already there. Choose another name for the backup.");
            assertThat(zip).doesNotExist();
            assertThat(ledger.backups()).isEmpty();
            assertThat(key).hasContent("somebody's");
        }
    }

    @Test
    void what_a_club_keeps_sealed_is_for_its_exchange_alone() {
        ExchangeId sheets = ExchangeId.sheets(TieId.of("A1"));
        Sheet sheet = Sheet.full(Pair.of("a", "b"));
        try (Ledger ledger = open()) {
            ledger.decide(Asked.request("k"), Asked.notes(new SheetKept(sheets, ClubId.of("N"), sheet, "secret")));
            assertThat(ledger.ownSheet(sheets, ClubId.of("N"))).contains(new Sealed(sheet, "secret"));
            assertThat(ledger.ownSheet(ExchangeId.sheets(TieId.of("A2")), ClubId.of("N")))
                    .isEmpty();
        }
    }
}
