package tiewright.standings;

import java.util.ArrayList;
import java.util.List;

/**
 * A way in which one criterion can part a group, seen from one club.
 *
 * @param ahead how many of the group are ahead of the club
 * @param level those that stay level, the club among them, in the order of the group
 */
record Split(int ahead, int[] level) {

    /** Collects a split while the clubs of a group are gone through in their order. */
    static final class Builder {
        private final List<Integer> same = new ArrayList<>();
        private int ahead;

        void ahead() {
            ahead++;
        }

        void level(int club) {
            same.add(club);
        }

        Split build() {
            return new Split(ahead, same.stream().mapToInt(Integer::intValue).toArray());
        }
    }
}
