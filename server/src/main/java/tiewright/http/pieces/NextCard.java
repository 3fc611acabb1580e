package tiewright.http.pieces;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A player's next rubber, readable at arm's length.
 *
 * @param court the court's number alone, empty while unknown
 * @param start when it is to begin, to be counted down; empty once it was called and where no time is known
 * @param lines what else is known: with whom, against whom, rest, in that order
 * @param note a line below (what follows when the sheets open)
 * @param moved the published time that changed last, if one did
 */
public record NextCard(
        String title,
        String court,
        String when,
        Optional<Instant> start,
        State state,
        List<Line> lines,
        String note,
        Optional<Moved> moved) {

    public NextCard {
        lines = List.copyOf(lines);
    }

    public NextCard(String title, String court, String when, State state, List<Line> lines, String note) {
        this(title, court, when, Optional.empty(), state, lines, note, Optional.empty());
    }

    public record Line(String label, String words) {}
}
