package tiewright.standings;

/**
 * One way in which an open tie can end, rubber by rubber and game by game; the points of the games not yet played are
 * left open.
 *
 * @param tie as it will count, with the points of the decided rubbers only
 */
record OpenOutcome(CountedTie tie, OpenPoints points) {
    boolean pointsOpen() {
        return points.games() > 0;
    }

    /** The open points with {@code club} as the home side. */
    OpenPoints seenBy(int club) {
        return club == tie.home() ? points : points.swapped();
    }
}
