package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;

/**
 * The power goes at any moment and the disk loses what it was not asked to keep: what had been answered is there once, and no
 * decision is there by half. {@code -Dcuts=500} tries as many.
 */
@Timeout(7200)
class PowerCutTest {
    private static final int CUTS = Integer.getInteger("cuts", 20);

    @TempDir
    Path folder;

    @Test
    void every_acknowledged_fact_is_found_after_the_power_went_at_any_moment() throws Exception {
        Seed seed = Seed.fresh();
        PowerCuts cuts = new PowerCuts(folder, seed.random());
        for (int cut = 0; cut < CUTS; cut++) {
            cuts.cut(Kills.When.of(cut));
        }
        Map<Kills.When, Tally> seen = cuts.tallies();
        assertThat(seen).as(seed.toString()).containsOnlyKeys(Kills.When.values());
        assertThat(seen.values()).as(seed + " " + seen).allMatch(Tally::isClean);
        assertThat(seen.values().stream().mapToInt(Tally::acknowledged).sum())
                .as("steps that were looked for")
                .isGreaterThan(CUTS);
    }
}
