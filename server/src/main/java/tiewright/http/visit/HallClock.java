package tiewright.http.visit;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;

/** How a time of day is written on every page: 09:05. */
public final class HallClock {
    private HallClock() {}

    /** To the minute. */
    public static String said(LocalTime time) {
        return time.truncatedTo(ChronoUnit.MINUTES).toString();
    }
}
