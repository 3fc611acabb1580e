package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Countdown;
import tiewright.http.pieces.TieLine;

/**
 * A captain's ties.
 *
 * @param countdowns to the deadlines of sheets that are not in, the nearest first
 * @param unread words that ask to read the conditions, with their version; empty once they were read
 */
public record CaptainView(List<Countdown> countdowns, List<Mine> ties, Optional<String> unread, String clubHref) {

    /** A tie with what its captain can do now. */
    public record Mine(TieLine line, List<Todo> todo) {}

    public record Todo(String words, String href, boolean main) {}
}
