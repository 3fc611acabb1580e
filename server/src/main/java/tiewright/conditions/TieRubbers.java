package tiewright.conditions;

/**
 * What the rubbers of a tie are.
 *
 * @param count 1 or more, the decider not among them
 */
public record TieRubbers(int count, RubberWeights weights, RubberKinds kinds) {
    public TieRubbers {
        if (count < 1) {
            throw new IllegalArgumentException("a tie has a rubber or more, got " + count);
        }
    }

    /** So many that differ in nothing. */
    public static TieRubbers alike(int count) {
        return new TieRubbers(count, RubberWeights.EQUAL, RubberKinds.OPEN);
    }

    /** They differ in nothing, so that the same pairs in another order are worth the same. */
    public boolean areAlike() {
        return weights.areEqual() && kinds.areOpen();
    }

    /** The first rubber of the same kind, from 1: the order of strength compares only rubbers of one kind. */
    public int top(int rubber) {
        int first = 1;
        while (kinds.of(first) != kinds.of(rubber)) {
            first++;
        }
        return first;
    }

    public boolean canBeLevel() {
        return weights.canBeLevel(count);
    }
}
