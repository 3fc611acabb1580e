package tiewright.http.pieces;

/**
 * Work that takes a while.
 *
 * @param line how far it is, worded, with the best so far
 * @param done steps done of {@code total}
 * @param stopAction where stopping is posted to, empty if it cannot be stopped
 * @param stop words of the button to stop and keep the best so far
 */
public record Progress(String id, String title, String line, long done, long total, String stopAction, Button stop) {}
