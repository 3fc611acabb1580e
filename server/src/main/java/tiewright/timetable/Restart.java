package tiewright.timetable;

import java.time.Duration;

/**
 * Warm-up after play was stopped: none after up to 5 minutes, 3 minutes after up to 20, else 5 (French padel federation,
 * timing guide, from a summary).
 */
public final class Restart {
    private Restart() {}

    public static Duration warmUpAfter(Duration stop) {
        if (stop.compareTo(Duration.ofMinutes(5)) <= 0) {
            return Duration.ZERO;
        }
        return Duration.ofMinutes(stop.compareTo(Duration.ofMinutes(20)) <= 0 ? 3 : 5);
    }
}
