package tiewright.http.pieces;

/**
 * A numbered notice: what was, what is now, why, whom it touches.
 *
 * @param number the words of its number ("Notice 7")
 * @param time when it was given
 * @param before what no longer holds, shown struck
 * @param now what holds
 * @param by who gave it
 */
public record Notice(
    String number, String title, String time, String before, String now, String why, String whom, String by) {}
