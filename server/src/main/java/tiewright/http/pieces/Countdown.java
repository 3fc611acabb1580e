package tiewright.http.pieces;

import java.time.Instant;

/**
 * A deadline nobody can miss; without scripts the line alone is shown.
 *
 * @param line the deadline in words ("This sheet must be sealed by 13:05")
 * @param closes from then on it is not taken any more
 * @param words what stands there after the deadline
 * @param href where to do it, empty for no link
 */
public record Countdown(String line, Instant deadline, Instant closes, Words words, String href) {
    /**
     * @param still after the deadline, while it is taken still
     * @param late once it is not taken any more
     * @param now what stands there as the page is made, and without scripts: one of the two, or nothing before the deadline
     */
    public record Words(String still, String late, String now) {}
}
