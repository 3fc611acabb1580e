package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.TieScore;

/** A guard against a slow turn, far above what is usual: 64 clubs in 16 pools take about a millisecond. */
class StandingsSpeedTest {
    @Test
    void all_tables_of_64_clubs_take_no_time_to_speak_of() {
        TieShape shape = Rules.shape(4, true, 1, 11);
        List<ClubId> pool = RandomPools.clubs(4);
        List<TieScore> ties = new RandomPools(new Random(1), shape).ties(pool, 0);
        TableInput small = TableInput.of(pool, ties, Rules.of("overall-difference", "1/0/0", shape));
        long best = Long.MAX_VALUE;
        for (int run = 0; run < 200; run++) {
            long start = System.nanoTime();
            for (int i = 0; i < 16; i++) {
                Standings.of(small);
            }
            best = Math.min(best, System.nanoTime() - start);
        }
        System.out.println("16 pools of 4: " + best / 1_000 + " us");
        assertThat(best).isLessThan(20_000_000L);
    }
}
