package tiewright.http.views;

import java.util.List;

/**
 * The board for the wall.
 *
 * @param turned sheets that were opened and of which nothing is played yet, both sides turned over
 */
public record BoardView(NowView now, List<Turned> turned) {
    public BoardView {
        turned = List.copyOf(turned);
    }

    /** @param court its number alone, empty while unknown */
    public record Turned(String court, String when, String home, String away, List<Rubber> rubbers) {
        public Turned {
            rubbers = List.copyOf(rubbers);
        }
    }

    /** Both pairs of a rubber, by name. */
    public record Rubber(String label, String home, String away) {}
}
