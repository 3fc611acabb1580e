package tiewright.http.pieces;

import java.util.List;

/**
 * A tie in the day of one club, told from that club's side: one row, and the row is the link.
 *
 * @param when its time ("13:20")
 * @param old a published time that no longer holds, shown struck; empty if it never changed
 * @param title against whom
 * @param where its court ("court 3"), may be empty
 * @param strip its rubbers in order; empty before the sheets open
 * @param detail what else counts now, in words; may be empty
 */
public record DayLine(
        String when,
        String old,
        String title,
        String where,
        List<Rubber> strip,
        String detail,
        Score score,
        String href) {
    public DayLine {
        strip = List.copyOf(strip);
    }

    /**
     * A rubber as a square.
     *
     * @param kind won, lost, void, held, or left
     * @param words the same in words
     */
    public record Rubber(String kind, String words) {}

    /** Own rubbers first; {@code won} alone where nothing is played yet says what is to come. */
    public record Score(String rubbers, String word) {}
}
