package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;
import tiewright.event.SetUpFact;

/** A process is killed at any moment: what it had answered is there once, and no decision is there by half. */
@Timeout(1800)
class KilledTest {
    private static final int KILLS = 20;
    private static final int ROUNDS = 4;

    @TempDir
    Path folder;

    @Test
    @SuppressWarnings("try") // other work is there to be in the way, not to be called
    void every_acknowledged_fact_is_found_after_a_kill_at_any_moment() throws Exception {
        Seed seed = Seed.fresh();
        Kills kills = new Kills(folder, seed.random(), TimeUnit.MILLISECONDS.toNanos(500));
        try (Kills.Busy busy = Kills.Busy.everyProcessor()) {
            for (int kill = 0; kill < KILLS; kill++) {
                kills.kill(Kills.When.of(kill));
            }
        }
        Map<Kills.When, Tally> seen = kills.tallies();
        assertThat(seen).as(seed.toString()).containsOnlyKeys(Kills.When.values());
        assertThat(seen.values()).as(seed + " " + seen).allMatch(Tally::isClean);
        assertThat(seen.values().stream().mapToInt(Tally::acknowledged).sum())
                .as("steps that were looked for")
                .isGreaterThan(KILLS);
    }

    /** Notes beside the ledger: the set that was acknowledged last, or the one after it, whole; and sent again it changes nothing. */
    @Test
    void every_acknowledged_set_of_private_notes_survives_whole() throws Exception {
        Seed seed = Seed.fresh();
        Random random = seed.random();
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
                assertThat(last).as(seed.toString()).isBetween(acknowledged, acknowledged + 1);
                assertThat(ledger.filmsOf(Noter.CLUB)).hasSize(Noter.SET);
                assertThat(Noter.kept(ledger)).as(seed.toString()).containsExactly("set " + last);
                assertThat(ledger.decide(Noter.request(last), Asked.kept(Noter.set(0))))
                        .isEqualTo(new PrivateAnswer.Done(true));
                assertThat(Noter.kept(ledger)).containsExactly("set " + last);
                from = last + 1;
            }
        }
    }
}
