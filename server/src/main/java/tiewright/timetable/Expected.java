package tiewright.timetable;

import java.time.LocalTime;

/**
 * When a tie is expected to begin, to five minutes.
 *
 * @param notBefore never earlier than published
 * @param likelyFrom it begins between these two on eight days of ten
 */
public record Expected(LocalTime published, LocalTime notBefore, LocalTime likelyFrom, LocalTime likelyTo) {
    /** Ten minutes or more behind what was published: worth telling. */
    public boolean isLate() {
        return !likelyFrom.isBefore(published.plusMinutes(10));
    }
}
