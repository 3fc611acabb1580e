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
 * @param published the start that was published, where that is why it stays; it begins later where its courts are not free by then
 */
public record Pin(
        TieId tie,
        Optional<RubberNo> rubber,
        LocalTime start,
        LocalTime end,
        List<String> courts,
        Why why,
        Optional<LocalTime> published) {
    /** Why it stays. */
    public enum Why {
        /** somebody put it there */
        BY_HAND,
        /** it was called, or cards of it are in */
        IN_PLAY,
        /** its published start is too near to be changed */
        FROZEN,
        /** nothing forces it from its published start and courts */
        KEPT
    }

    public Pin {
        courts = List.copyOf(courts);
        if (courts.isEmpty() || end.equals(start)) {
            throw new IllegalArgumentException("a pin needs a court and must end after it starts: " + tie);
        }
    }

    public Pin(TieId tie, Optional<RubberNo> rubber, LocalTime start, LocalTime end, List<String> courts, Why why) {
        this(tie, rubber, start, end, courts, why, Optional.empty());
    }

    /** How long it takes its courts; where it ends at an earlier hour than it starts, it runs past midnight. */
    int minutes() {
        return Math.floorMod(Clock.minute(end) - Clock.minute(start), Clock.DAY);
    }
}
