package tiewright.saturday;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Days that a machine plays, until a promise breaks. {@code -Ddays=}, {@code -Dseed=} and {@code -Dclubs=} choose others. */
class SaturdaysTest {
    private static final int DAYS = Integer.getInteger("days", 14);
    private static final int CLUBS = Integer.getInteger("clubs", 4);
    private static final int STEPS = Integer.getInteger("steps", 120);
    private static final long FIRST = Long.getLong("seed", 1);

    @Test
    void every_promise_holds_on_every_day() {
        for (long seed = FIRST; seed < FIRST + DAYS; seed++) {
            Saturday day = new Saturday(seed, CLUBS, STEPS);
            long began = System.nanoTime();
            Optional<Saturday.Failure> failure = day.play();
            System.out.println("day " + seed + ": " + (System.nanoTime() - began) / 1_000_000 + " ms");
            if (failure.isPresent()) {
                fail(new Shortest(day, Integer.getInteger("tries", 25))
                        .of(failure.get())
                        .toString());
            }
        }
    }
}
