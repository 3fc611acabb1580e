package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.Recorded;
import tiewright.event.SetUpFact;

/** A process is killed at any moment: what it had answered is there, and no decision is there by half. */
class KilledTest {
    private static final int ROUNDS = 4;
    private static final long SEED = Long.getLong("seed", new Random().nextLong());

    @TempDir
    Path folder;

    @RepeatedTest(2)
    void every_acknowledged_fact_survives_and_no_decision_is_kept_by_half() throws Exception {
        System.out.println("killed at moments of -Dseed=" + SEED);
        Random random = new Random(SEED);
        long before = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Appender child = Appender.start(folder, "round" + round);
            long acknowledged = before;
            int answers = 1 + random.nextInt(40);
            for (int i = 0; i < answers; i++) {
                acknowledged = child.acknowledged();
            }
            pause(random.nextInt(2_000_000));
            List<Long> rest = child.kill();
            acknowledged = rest.isEmpty() ? acknowledged : rest.get(rest.size() - 1);
            assertThat(acknowledged).isGreaterThanOrEqualTo(before + (long) answers * Appender.FACTS);
            before = assertKept(acknowledged);
        }
    }

    private long assertKept(long acknowledged) {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            long last = ledger.event().seq();
            assertThat(last).isBetween(acknowledged, acknowledged + Appender.FACTS);
            assertThat(last % Appender.FACTS).as("whole decisions").isZero();
            assertThat(ledger.facts(0))
                    .extracting(Recorded::seq)
                    .isEqualTo(LongStream.rangeClosed(1, last).boxed().toList());
            LongStream.rangeClosed(1, last)
                    .forEach(seq -> assertThat(ledger.event().club(ClubId.of("c" + seq)))
                            .isPresent());
            assertThat(ledger.directory().people())
                    .as("the note of every decision")
                    .hasSize((int) last / Appender.FACTS);
            assertThat(ledger.directory().person(PlayerId.of("p" + last))).isPresent();
            return last;
        }
    }

    /** Notes beside the ledger: the set that was acknowledged last, or the one after it, whole; and sent again it changes nothing. */
    @Test
    void every_acknowledged_set_of_private_notes_survives_whole() throws Exception {
        System.out.println("killed after so many sets of -Dseed=" + SEED);
        Random random = new Random(SEED);
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            ledger.decide(
                    Asked.request("club"),
                    Asked.facts(new SetUpFact.ClubEntered(Noter.CLUB, "North", Optional.empty(), OptionalInt.empty())));
        }
        long from = 1;
        for (int round = 0; round < ROUNDS; round++) {
            long acknowledged = Noter.start(folder, from).killAfter(1 + random.nextInt(30));
            try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
                long last = ledger.noted(Noter.CLUB);
                assertThat(last).as("-Dseed=" + SEED).isBetween(acknowledged, acknowledged + 1);
                assertThat(ledger.filmsOf(Noter.CLUB)).hasSize(Noter.SET);
                assertThat(Noter.kept(ledger)).as("-Dseed=" + SEED).containsExactly("set " + last);
                assertThat(ledger.decide(Noter.request(last), Asked.kept(Noter.set(0))))
                        .isEqualTo(new PrivateAnswer.Done(true));
                assertThat(Noter.kept(ledger)).containsExactly("set " + last);
                from = last + 1;
            }
        }
    }

    /** So that the kill falls into any part of a write; measured in nanoseconds, as a write takes about a millisecond. */
    private static void pause(int nanoseconds) {
        long end = System.nanoTime() + nanoseconds;
        while (System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }
}
