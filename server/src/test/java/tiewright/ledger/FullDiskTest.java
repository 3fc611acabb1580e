package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.SetUpFact.ClubEntered;

/** A disk that is full for a while: what is answered is kept, what is not kept is not answered, and it goes on by itself. */
class FullDiskTest {
    @TempDir
    Path folder;

    @AfterEach
    void makeRoom() {
        FullDisk.isFull(false);
        FullDisk.isBroken(false);
    }

    private static Decision club(String code) {
        return Asked.facts(new ClubEntered(ClubId.of(code), code, Optional.empty(), OptionalInt.empty()));
    }

    private static void assertNotKept(Ledger ledger, String code) {
        assertThatThrownBy(() -> ledger.decide(Asked.request(code), club(code)))
                .isInstanceOfSatisfying(
                        LedgerException.class, why -> assertThat(why.isForNow()).isTrue())
                .hasMessageContaining("is full, so nothing of this was kept");
    }

    @Test
    void it_goes_on_by_itself_as_soon_as_there_is_room() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK)) {
            ledger.decide(
                    Asked.request("name"), Asked.notes(new PersonNamed(PlayerId.of("p"), "Ada", OptionalInt.empty())));
            ledger.decide(Asked.request("A"), club("A"));
            FullDisk.isFull(true);
            assertNotKept(ledger, "B");
            assertNotKept(ledger, "B");
            assertNotKept(ledger, "C");
            assertThat(ledger.event().clubs().keySet())
                    .as("what is in memory is shown meanwhile")
                    .containsExactly(ClubId.of("A"));
            FullDisk.isFull(false);
            assertThat(ledger.decide(Asked.request("B"), club("B"))).isInstanceOf(Answer.Done.class);
            assertThat(ledger.decide(Asked.request("B"), club("B")))
                    .isInstanceOfSatisfying(
                            Answer.Done.class, done -> assertThat(done.again()).isTrue());
            assertThat(ledger.facts(0)).hasSize(2);
        }
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.event().clubs().keySet()).containsExactly(ClubId.of("A"), ClubId.of("B"));
            assertThat(ledger.directory().person(PlayerId.of("p"))).isPresent();
        }
    }

    @Test
    void reading_what_is_not_in_memory_goes_on_as_well() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK)) {
            ledger.decide(Asked.request("A"), club("A"));
            FullDisk.isFull(true);
            assertNotKept(ledger, "B");
            FullDisk.isFull(false);
            assertThat(ledger.hurt()).isEmpty();
            assertThat(ledger.facts(0)).hasSize(1);
        }
    }

    /** A disk that fails in another way is not called full. */
    @Test
    void a_disk_that_cannot_be_written_is_to_be_looked_at() {
        try (Ledger ledger = FullDisk.ledger(folder, Asked.CLOCK)) {
            ledger.decide(Asked.request("A"), club("A"));
            FullDisk.isBroken(true);
            for (int i = 0; i < 2; i++) {
                assertThatThrownBy(() -> ledger.decide(Asked.request("B"), club("B")))
                        .isInstanceOfSatisfying(
                                LedgerException.class,
                                why -> assertThat(why.isForNow()).isTrue())
                        .hasMessageContaining("could not be written, so nothing of this was kept. Look at that disk");
            }
            FullDisk.isBroken(false);
            assertThat(ledger.decide(Asked.request("B"), club("B"))).isInstanceOf(Answer.Done.class);
        }
    }

    @Test
    void a_disk_that_is_full_at_the_start_is_told_so() {
        Ledger.open(folder, Asked.CLOCK).close();
        FullDisk.isFull(true);
        assertThatThrownBy(() -> FullDisk.ledger(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("is full. Make room on it, then try again.");
        FullDisk.isFull(false);
        FullDisk.ledger(folder, Asked.CLOCK).close();
    }
}
