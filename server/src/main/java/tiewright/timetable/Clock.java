package tiewright.timetable;

import java.time.LocalTime;

/** Times of day as minutes since midnight, in which plans are reckoned: a day that runs past midnight goes on past 1,440. */
final class Clock {
    private Clock() {}

    static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    static LocalTime time(int minute) {
        return LocalTime.MIDNIGHT.plusMinutes(minute);
    }

    /** The quotient, to the next whole number up. */
    static int roundedUp(long minutes, int unit) {
        return (int) -Math.floorDiv(-minutes, unit);
    }
}
