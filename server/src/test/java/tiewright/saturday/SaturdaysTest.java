package tiewright.saturday;

import static org.junit.jupiter.api.Assertions.fail;

import org.junit.jupiter.api.Test;
import tiewright.Seed;

/**
 * Days that a machine plays, until a promise breaks: new ones in each build. {@code -Ddays=}, {@code -Dseed=}, {@code -Dclubs=}
 * and {@code -Dsteps=} choose others.
 */
class SaturdaysTest {
    @Test
    void every_promise_holds_on_every_day() {
        long first = Seed.fresh().value();
        new Days(Integer.getInteger("clubs", 4), Integer.getInteger("steps", 120))
                .firstFailure(first, Integer.getInteger("days", 30))
                .ifPresent(failure -> fail(failure.toString()));
    }
}
