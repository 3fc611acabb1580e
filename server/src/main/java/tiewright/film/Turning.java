package tiewright.film;

/**
 * Places that are turned into each other: a circle, or circles on a circle.
 *
 * @param small places of each small circle; the places 0 to {@code size - 1} go round the first, then the next
 * @param large how many small circles; 1 for a plain circle
 */
record Turning(int small, int large) {
    /** Nine places need three circles of three: on one circle of nine there is no whist tournament. */
    static Turning of(int size) {
        return size == 9 ? new Turning(3, 3) : new Turning(size, 1);
    }

    int size() {
        return small * large;
    }

    /** Where a place comes to when place 0 comes to {@code by}. */
    int turned(int place, int by) {
        return (place / small + by / small) % large * small + (place % small + by % small) % small;
    }

    /** How far two places are apart, the same either way and after every turn. */
    int distance(int one, int other) {
        return Math.min(way(one, other), way(other, one));
    }

    private int way(int from, int to) {
        return Math.floorMod(to / small - from / small, large) * small
                + Math.floorMod(to % small - from % small, small);
    }
}
