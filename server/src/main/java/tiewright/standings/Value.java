package tiewright.standings;

/**
 * What one criterion says of one club; the larger value is ahead.
 *
 * @param won the sum for the club
 * @param lost the sum against it; 0 for tie points and ties won, which have no counterpart
 */
public record Value(Form form, long won, long lost) implements Comparable<Value> {
    public long difference() {
        return won - lost;
    }

    /** Exact: ratios are compared as fractions, and all with nothing lost are equal and ahead of the rest. */
    @Override
    public int compareTo(Value other) {
        return switch (form) {
            case WON -> Long.compare(won, other.won);
            case DIFFERENCE -> Long.compare(difference(), other.difference());
            case RATIO -> compareRatio(other);
        };
    }

    private int compareRatio(Value other) {
        if (lost == 0 || other.lost == 0) {
            return Boolean.compare(lost == 0, other.lost == 0);
        }
        return Long.compare(won * other.lost, other.won * lost);
    }
}
