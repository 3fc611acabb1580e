package tiewright.timetable;

import java.time.LocalTime;

/** Times of day as minutes since midnight, in which plans are reckoned: a day that runs past midnight goes on past 1,440. */
final class Clock {
    static final int DAY = 24 * 60;
    private static final int HOURS_BEFORE = 6;

    private Clock() {}

    static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    /** The same in a plan that begins at {@code base}: from six hours before it to eighteen after it, whatever the date. */
    static int minute(LocalTime time, int base) {
        int minute = minute(time);
        if (minute < base - HOURS_BEFORE * 60) {
            return minute + DAY;
        }
        return minute >= base - HOURS_BEFORE * 60 + DAY ? minute - DAY : minute;
    }

    static LocalTime time(int minute) {
        return LocalTime.MIDNIGHT.plusMinutes(minute);
    }

    /** The quotient, to the next whole number up. */
    static int roundedUp(long minutes, int unit) {
        return (int) -Math.floorDiv(-minutes, unit);
    }
}
