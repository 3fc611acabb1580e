package tiewright.saturday;

import static org.junit.jupiter.api.Assertions.fail;

import org.junit.jupiter.api.Test;

/**
 * Days that a machine plays, until a promise breaks: the same ones in each build, so that a red one is about what was changed. New ones
 * are played by the profile {@code saturdays}; {@code -Ddays=}, {@code -Dseed=}, {@code -Dclubs=} and {@code -Dsteps=} choose others.
 */
class SaturdaysTest {
    @Test
    void every_promise_holds_on_every_day() {
        long first = Long.getLong("seed", 1);
        new Days(Integer.getInteger("clubs", 4), Integer.getInteger("steps", 120))
                .firstFailure(first, Integer.getInteger("days", 30))
                .ifPresent(failure -> fail(failure.toString()));
    }
}
