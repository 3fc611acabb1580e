package tiewright.http.pieces;

import java.util.List;

/** The knockout, a column for each round from left to right; a screen reader meets a list of lists. */
public record Bracket(String title, List<Round> rounds) {

    public Bracket {
        rounds = List.copyOf(rounds);
    }

    /** Whether the ties of round {@code index} (from 0) lead two by two to those of the next, so that lines can join them. */
    public boolean joined(int index) {
        return index >= 0
                && index + 1 < rounds.size()
                && rounds.get(index).ties().size()
                        == 2 * rounds.get(index + 1).ties().size();
    }

    public record Round(String title, List<Slot> ties) {
        public Round {
            ties = List.copyOf(ties);
        }
    }

    /**
     * One tie of the bracket.
     *
     * @param label its name, time and court ("Semi-final 1, 14:00, court 2")
     * @param href its page, empty for no link
     */
    public record Slot(String label, String href, Entry home, Entry away, State state) {}

    /**
     * One side of a tie.
     *
     * @param name the club, empty while it is not known
     * @param from where the side comes from ("1st of pool A")
     * @param score rubbers won, empty before play
     * @param now who would stand here if it ended now, in words; empty where nobody can say
     */
    public record Entry(String name, String from, String score, boolean won, String now) {
        public Entry(String name, String from, String score, boolean won) {
            this(name, from, score, won, "");
        }
    }
}
