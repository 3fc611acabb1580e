package tiewright.http.pieces;

import java.time.Instant;

/**
 * A deadline nobody can miss; without scripts the line alone is shown.
 *
 * @param line the deadline in words ("This sheet must be sealed by 13:05")
 * @param late words once it has passed
 * @param href where to do it, empty for no link
 */
public record Countdown(String line, Instant deadline, String late, String href) {}
