package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.SetUpFact.ClubEntered;

/** A database whose pages a disk has damaged, the newest or others: told with the way out, never served as if it were true. */
class DamagedPagesTest {
    private static final int CLUBS = 30;
    private static final int PAGE = 4096;
    /** Each opens a database or refuses to. */
    private static final int TRIES = 25;

    @TempDir
    Path place;

    private Path folder;
    private Path file;
    private List<Recorded> facts;

    @BeforeEach
    void anEvent() {
        folder = place.resolve("event");
        file = folder.resolve("tiewright.mv.db");
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            for (int i = 0; i < CLUBS; i++) {
                enter(ledger, i);
            }
            facts = ledger.facts(0);
        }
    }

    private static void enter(Ledger ledger, int i) {
        ledger.decide(
                Asked.request("k" + i),
                Asked.facts(new ClubEntered(
                        ClubId.of("C" + i), "Newest club " + i, Optional.empty(), OptionalInt.empty())));
    }

    private void assertRefused(String... said) throws IOException {
        byte[] found = Files.readAllBytes(file);
        assertThatThrownBy(() -> Ledger.open(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContainingAll(said)
                .message()
                .doesNotContain("org.h2", "MVStore", "Exception", "[9", "SQL");
        assertThat(Files.readAllBytes(file)).as("left as it was").isEqualTo(found);
    }

    private void assertWhole() {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.facts(0)).isEqualTo(facts);
        }
    }

    private void zeroed(int from, int length) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        Arrays.fill(bytes, from, from + length, (byte) 0);
        Files.write(file, bytes);
    }

    @Test
    void newest_pages_that_are_gone_are_told_and_the_file_is_left_to_the_byte() throws IOException {
        byte[] whole = Files.readAllBytes(file);
        for (int pages : List.of(1, 3, 20)) {
            Files.write(file, whole);
            zeroed(whole.length - pages * PAGE, pages * PAGE);
            assertRefused("does not hold all that was acknowledged", "restore", "acknowledged.txt");
            Files.write(file, Arrays.copyOf(whole, whole.length - pages * PAGE));
            assertRefused("does not hold all that was acknowledged", "restore", "acknowledged.txt");
        }
        Files.write(file, whole);
        assertWhole();
    }

    /** The way out that the sentence names: whoever has no backup may go on with what is left. */
    @Test
    void without_the_mark_it_goes_on_with_what_is_left() throws IOException {
        byte[] whole = Files.readAllBytes(file);
        zeroed(whole.length - 3 * PAGE, 3 * PAGE);
        assertRefused("delete");
        Files.delete(folder.resolve("acknowledged.txt"));
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.facts(0))
                    .hasSizeBetween(1, CLUBS - 1)
                    .isEqualTo(facts.subList(0, ledger.facts(0).size()));
            enter(ledger, 77);
        }
        try (Ledger again = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(again.facts(0)).isNotEmpty();
        }
    }

    @Test
    void an_older_file_laid_in_the_place_of_the_newer_is_told() throws IOException {
        Path older = Files.copy(file, place.resolve("older"));
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            enter(ledger, CLUBS);
        }
        Files.copy(older, file, StandardCopyOption.REPLACE_EXISTING);
        assertRefused("does not hold all that was acknowledged");
    }

    /** As a power cut leaves it: the disk kept the head and the foot of what came last, and not its middle. */
    @Test
    void what_was_written_after_the_last_answer_is_left_out() throws IOException {
        byte[] mark = Files.readAllBytes(folder.resolve("acknowledged.txt"));
        int acknowledged = (int) Files.size(file);
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            enter(ledger, CLUBS);
        }
        byte[] longer = Files.readAllBytes(file);
        for (int sector = acknowledged; sector < longer.length; sector += 3 * 512) {
            byte[] torn = longer.clone();
            Arrays.fill(torn, sector, sector + 512, (byte) 0);
            Files.write(file, torn);
            Files.write(folder.resolve("acknowledged.txt"), mark);
            assertWhole();
        }
    }

    /** A copy that went on as an event on another laptop and was laid back by hand is not cut down to what this one knew. */
    @Test
    void a_file_that_went_on_elsewhere_keeps_all_that_is_in_it() throws IOException {
        byte[] mark = Files.readAllBytes(folder.resolve("acknowledged.txt"));
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            for (int i = CLUBS; i < 2 * CLUBS; i++) {
                enter(ledger, i);
            }
        }
        Files.write(folder.resolve("acknowledged.txt"), mark);
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.facts(0)).hasSize(2 * CLUBS);
        }
    }

    @Test
    void notes_that_are_gone_are_told_like_facts() throws IOException {
        Path older = Files.copy(file, place.resolve("older"));
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            ledger.decide(
                    Asked.request("note"),
                    Asked.notes(new PrivateNote.PersonNamed(PlayerId.of("a"), "Ana", OptionalInt.empty())));
        }
        Files.copy(older, file, StandardCopyOption.REPLACE_EXISTING);
        assertRefused("does not hold all that was acknowledged");
    }

    /** The database does not notice a changed letter. */
    @Test
    void a_letter_of_a_fact_that_changed_on_the_disk_is_told_and_never_shown() throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        for (int at = text.indexOf("Newest club 7"); at >= 0; at = text.indexOf("Newest club 7", at + 1)) {
            bytes[at] = 'M';
        }
        Files.write(file, bytes);
        assertThatThrownBy(() -> Ledger.open(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContainingAll("holds facts that are no longer what was written down", "restore");
    }

    @Test
    void wherever_bytes_change_what_is_served_is_what_was_written() throws IOException {
        Random random = Seed.random(1);
        byte[] whole = Files.readAllBytes(file);
        byte[] mark = Files.readAllBytes(folder.resolve("acknowledged.txt"));
        for (int i = 0; i < TRIES; i++) {
            byte[] bytes = whole.clone();
            int at = random.nextInt(bytes.length);
            for (int k = at; k < Math.min(bytes.length, at + 1 + random.nextInt(200)); k++) {
                bytes[k] = (byte) random.nextInt(256);
            }
            Files.write(file, bytes);
            Files.write(folder.resolve("acknowledged.txt"), mark);
            try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
                assertThat(ledger.facts(0)).as("try %d %s", i, Seed.rerun(1)).isEqualTo(facts);
            } catch (LedgerException told) {
                assertThat(told).hasMessageContaining("restore");
            }
        }
    }

    @Test
    void a_mark_that_is_itself_damaged_stops_nothing() throws IOException {
        for (String left : List.of("", "garbage", "1 99")) {
            Files.writeString(folder.resolve("acknowledged.txt"), left);
            assertWhole();
        }
    }

    @Test
    void a_file_written_anew_is_no_damage_also_if_it_was_cut_off_after_the_move() throws IOException {
        byte[] mark = Files.readAllBytes(folder.resolve("acknowledged.txt"));
        Rewriting.rewrite(file);
        assertThat(Files.readAllBytes(folder.resolve("acknowledged.txt"))).isNotEqualTo(mark);
        assertWhole();
        try (Store store = Store.open(folder, new Growth(1, Long.MAX_VALUE / 2))) {
            assertThat(store.facts()).isEqualTo(facts);
        }
        assertWhole();
    }

    /** Also what it had lost before is not forgotten by that. */
    @Test
    void a_damaged_fact_is_told_after_the_file_was_written_anew_too() throws IOException {
        String text = Files.readString(file, StandardCharsets.ISO_8859_1).replace("Newest club 7", "Newest club 8");
        Files.writeString(file, text, StandardCharsets.ISO_8859_1);
        Rewriting.rewrite(file);
        assertThatThrownBy(() -> Ledger.open(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("no longer what was written down");
    }

    @Test
    void every_kind_of_fact_adds_up_to_the_same_when_it_is_read_back() {
        Path other = place.resolve("all kinds");
        try (Ledger ledger = Ledger.open(other, Asked.CLOCK)) {
            ledger.decide(Asked.request("all"), Asked.facts(ExampleFacts.all()));
        }
        try (Ledger again = Ledger.open(other, Asked.CLOCK)) {
            assertThat(again.facts(0)).hasSameSizeAs(ExampleFacts.all());
        }
    }
}
