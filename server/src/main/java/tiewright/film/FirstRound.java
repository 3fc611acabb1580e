package tiewright.film;

import java.util.ArrayList;
import java.util.List;

/**
 * The first round of a whist tournament: tables of two against two so that every distance round the circle, either way,
 * parts partners once and opponents twice. Turned round the circle it gives every pair once as partners and twice as opponents.
 */
final class FirstRound {
    private final Turning turning;
    private final int around;
    private final boolean hasMiddle;
    private final int[] partners;
    private final int[] opponents;
    private final boolean[] seated;
    private final List<int[]> tables = new ArrayList<>();

    /**
     * @param hasMiddle somebody stands in the middle and is seated too, with the number after the last; else place 0 rests
     */
    FirstRound(Turning turning, boolean hasMiddle) {
        this.turning = turning;
        this.around = turning.size();
        this.hasMiddle = hasMiddle;
        this.partners = new int[around];
        this.opponents = new int[around];
        this.seated = new boolean[around + 1];
        seated[around] = !hasMiddle;
        seated[0] = !hasMiddle;
    }

    /** Four seats a table: the first two against the last two. */
    List<int[]> tables() {
        if (!fill()) {
            throw new IllegalStateException("no whist tournament on a circle of " + around);
        }
        return List.copyOf(tables);
    }

    private boolean fill() {
        int first = hasMiddle && !seated[around] ? around : next(0);
        if (first < 0) {
            return true;
        }
        seated[first] = true;
        for (int second = next(0); second >= 0; second = next(second + 1)) {
            if (mark(partners, first, second, 1)) {
                seated[second] = true;
                if (against(first, second)) {
                    return true;
                }
                seated[second] = false;
            }
            unmark(partners, first, second);
        }
        seated[first] = false;
        return false;
    }

    private boolean against(int first, int second) {
        for (int third = next(0); third >= 0; third = next(third + 1)) {
            seated[third] = true;
            for (int fourth = next(third + 1); fourth >= 0; fourth = next(fourth + 1)) {
                seated[fourth] = true;
                boolean fits = mark(partners, third, fourth, 1);
                int[][] across = {{first, third}, {first, fourth}, {second, third}, {second, fourth}};
                for (int[] two : across) {
                    fits &= mark(opponents, two[0], two[1], 2);
                }
                if (fits) {
                    tables.add(new int[] {first, second, third, fourth});
                    if (fill()) {
                        return true;
                    }
                    tables.remove(tables.size() - 1);
                }
                unmark(partners, third, fourth);
                for (int[] two : across) {
                    unmark(opponents, two[0], two[1]);
                }
                seated[fourth] = false;
            }
            seated[third] = false;
        }
        return false;
    }

    /** The next place on the circle where nobody is seated; -1 if there is none. */
    private int next(int from) {
        for (int place = from; place < around; place++) {
            if (!seated[place]) {
                return place;
            }
        }
        return -1;
    }

    /** @return whether the distance between the two is not met too often; whoever stands in the middle is at no distance */
    private boolean mark(int[] distances, int one, int other, int most) {
        return one == around || other == around || ++distances[turning.distance(one, other)] <= most;
    }

    private void unmark(int[] distances, int one, int other) {
        if (one != around && other != around) {
            distances[turning.distance(one, other)]--;
        }
    }
}
