package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.SetUpFact.ClubEntered;

/** A disk that can only be read, one that does not answer, no memory, no more files: told in words, nothing lost, and it goes on by itself. */
class TroubledDiskTest {
    @TempDir
    Path folder;

    @AfterEach
    void mend() {
        FullDisk.isMended();
    }

    private static Decision club(String code) {
        return Asked.facts(new ClubEntered(ClubId.of(code), code, Optional.empty(), OptionalInt.empty()));
    }

    private static void enter(Ledger ledger, String code) {
        assertThat(ledger.decide(Asked.request(code), club(code))).isInstanceOf(Answer.Done.class);
    }

    private static void assertTold(Ledger ledger, String code, String said) {
        assertThatThrownBy(() -> ledger.decide(Asked.request(code), club(code)))
                .isInstanceOfSatisfying(
                        LedgerException.class, why -> assertThat(why.isForNow()).isTrue())
                .hasMessageContaining(said)
                .hasMessageContaining("send it again");
    }

    private void assertKept(String... codes) {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.event().clubs().keySet().stream().map(ClubId::code))
                    .containsExactly(codes);
        }
    }

    @Test
    void a_disk_that_becomes_read_only_is_told_and_goes_on_once_it_can_be_written() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK)) {
            enter(ledger, "A");
            FullDisk.isReadOnly(true);
            assertTold(ledger, "B", "can only be read, so nothing of this was kept. Make it writable");
            assertTold(ledger, "B", "can only be read, so nothing of this was kept. Make it writable");
            assertThat(ledger.event().clubs()).hasSize(1);
            FullDisk.isMended();
            enter(ledger, "B");
            enter(ledger, "C");
        }
        assertKept("A", "B", "C");
    }

    @Test
    void a_disk_that_can_only_be_read_at_the_start_is_not_called_damaged() {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            enter(ledger, "A");
        }
        FullDisk.isReadOnly(true);
        assertThatThrownBy(() -> FullDisk.ledger(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("can only be read. Make it writable, or copy the folder to another disk.");
        FullDisk.isMended();
        assertKept("A");
    }

    @Test
    void memory_that_ends_in_the_middle_of_a_write_leaves_nothing_by_half() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK)) {
            enter(ledger, "A");
            FullDisk.isWithoutMemory(true);
            assertTold(ledger, "B", "The memory of Tiewright is used up, so nothing of this was kept");
            FullDisk.isMended();
            enter(ledger, "C");
            enter(ledger, "B");
        }
        assertKept("A", "C", "B");
    }

    @Test
    void memory_that_ends_while_a_decision_is_made_harms_no_later_one() {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            enter(ledger, "A");
            assertThatThrownBy(() -> ledger.decide(Asked.request("B"), (event, given) -> {
                        throw new OutOfMemoryError("Java heap space");
                    }))
                    .isInstanceOf(LedgerException.class)
                    .hasMessageContaining("The memory of Tiewright is used up");
            enter(ledger, "B");
        }
        assertKept("A", "B");
    }

    @Test
    void without_another_file_it_goes_on_answering() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK)) {
            enter(ledger, "A");
            FullDisk.isWithoutFiles(true);
            enter(ledger, "B");
            FullDisk.isFull(true);
            assertTold(ledger, "C", "is full");
            FullDisk.isFull(false);
            assertTold(ledger, "C", "could not be written, so nothing of this was kept");
            FullDisk.isMended();
            enter(ledger, "C");
        }
        assertKept("A", "B", "C");
    }

    @Test
    void a_disk_that_does_not_answer_is_told_and_what_it_wrote_late_counts_once() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK, Duration.ofMillis(300))) {
            enter(ledger, "A");
            CountDownLatch wakes = new CountDownLatch(1);
            FullDisk.answersAfter(wakes);
            assertTold(ledger, "B", "has not answered for 0 seconds, so nobody knows yet whether this was kept");
            assertTold(ledger, "C", "has not answered");
            assertThat(ledger.event().clubs()).as("pages are shown meanwhile").hasSize(1);
            wakes.countDown();
        }
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.decide(Asked.request("B"), club("B")))
                    .isInstanceOfSatisfying(
                            Answer.Done.class, done -> assertThat(done.again()).isTrue());
            assertThat(ledger.decide(Asked.request("C"), club("C")))
                    .isInstanceOfSatisfying(
                            Answer.Done.class, done -> assertThat(done.again()).isFalse());
        }
        assertKept("A", "B", "C");
    }
}
