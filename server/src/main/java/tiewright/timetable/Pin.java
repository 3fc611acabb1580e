package tiewright.timetable;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/**
 * A tie, or one rubber of it, that stays where it is.
 *
 * @param rubber empty = the whole tie
 * @param courts at least one
 */
public record Pin(TieId tie, Optional<RubberNo> rubber, LocalTime start, LocalTime end, List<String> courts, Why why) {
    /** Why it stays. */
    public enum Why {
        /** somebody put it there */
        BY_HAND,
        /** it was called, or cards of it are in */
        IN_PLAY,
        /** its published start is too near to be changed */
        FROZEN
    }

    public Pin {
        courts = List.copyOf(courts);
        if (courts.isEmpty() || !end.isAfter(start)) {
            throw new IllegalArgumentException("a pin needs a court and must end after it starts: " + tie);
        }
    }
}
