package tiewright.cli;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** The clock of the invented day: it goes on from mid-morning, and stays some minutes behind while what was before is told. */
final class DemoClock implements InstantSource {
    private final InstantSource morning;
    private volatile Duration behind = Duration.ZERO;

    DemoClock(InstantSource morning) {
        this.morning = morning;
    }

    /** From here on it is so many minutes before the morning from which it goes on. */
    void tellOf(int minutesBefore) {
        behind = Duration.ofMinutes(minutesBefore);
    }

    @Override
    public Instant instant() {
        return morning.instant().minus(behind);
    }
}
