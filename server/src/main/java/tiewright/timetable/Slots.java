package tiewright.timetable;

import java.time.LocalTime;
import java.util.Optional;

/**
 * The grid of a day: when it begins, how long a slot is, how much rest lies between, and when it must end.
 *
 * @param start of the first slot
 * @param minutes length of a slot: a rubber and its turnover; 1 to 600
 * @param restMinutes least time between the end of a club's tie and the start of its next one, 0 or more
 * @param closes when the venue closes; empty = nothing says so
 */
public record Slots(LocalTime start, int minutes, int restMinutes, Optional<LocalTime> closes) {
    public Slots {
        if (minutes < 1 || minutes > 600 || restMinutes < 0) {
            throw new IllegalArgumentException("no such slots: " + minutes + " with " + restMinutes + " of rest");
        }
    }

    Slots of(int length) {
        return new Slots(start, length, restMinutes, closes);
    }

    Slots resting(int least) {
        return new Slots(start, minutes, least, closes);
    }

    Slots closing(Optional<LocalTime> time) {
        return new Slots(start, minutes, restMinutes, time);
    }
}
