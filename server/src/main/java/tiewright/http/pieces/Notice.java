package tiewright.http.pieces;

import java.util.List;

/**
 * A numbered notice: what was, what is now, why, whom it touches.
 *
 * @param number the words of its number ("Notice 7")
 * @param time when it was given
 * @param before what no longer holds, shown struck
 * @param now what holds
 * @param by who gave it
 * @param moved the times that it changes, where there are several
 */
public record Notice(
        String number,
        String title,
        String time,
        String before,
        String now,
        String why,
        String whom,
        String by,
        List<Moved> moved) {
    private static final int A_FEW_LINES = 200;

    public Notice {
        moved = List.copyOf(moved);
    }

    public Notice(
            String number, String title, String time, String before, String now, String why, String whom, String by) {
        this(number, title, time, before, now, why, whom, by, List.of());
    }

    /** Without the list of what it moves and beyond its first sentences, for pages where the rest stands one press away. */
    public Notice inShort() {
        return new Notice(number, title, time, before, begun(now), why, whom, by);
    }

    private static String begun(String text) {
        int end = text.length() <= A_FEW_LINES ? -1 : text.lastIndexOf(". ", A_FEW_LINES);
        return end < 0 ? text : text.substring(0, end + 1) + " …";
    }
}
