package tiewright.standings;

import java.util.List;

/** Sums over counted ties. */
record Tallies(int clubs, List<CountedTie> ties) {

    /** The value of every club of {@code level}, in its order. */
    Value[] values(Criterion criterion, int[] level) {
        long[] won = new long[clubs];
        long[] lost = new long[clubs];
        boolean[] inGroup = members(level);
        boolean both = criterion.form() != Form.WON;
        for (CountedTie tie : ties) {
            if (criterion.among() && !(inGroup[tie.home()] && inGroup[tie.away()])) {
                continue;
            }
            int home = tie.forHome().of(criterion.quantity());
            int away = tie.forAway().of(criterion.quantity());
            won[tie.home()] += home;
            won[tie.away()] += away;
            if (both) {
                lost[tie.home()] += away;
                lost[tie.away()] += home;
            }
        }
        Value[] values = new Value[level.length];
        for (int i = 0; i < level.length; i++) {
            values[i] = new Value(criterion.form(), won[level[i]], lost[level[i]]);
        }
        return values;
    }

    boolean[] members(int[] level) {
        boolean[] in = new boolean[clubs];
        for (int club : level) {
            in[club] = true;
        }
        return in;
    }

    List<CountedTie> among(int[] level) {
        boolean[] in = members(level);
        return ties.stream().filter(tie -> in[tie.home()] && in[tie.away()]).toList();
    }
}
