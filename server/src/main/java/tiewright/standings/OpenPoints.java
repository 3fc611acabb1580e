package tiewright.standings;

/**
 * What games that are not yet played can bring in points when it is given who wins them.
 *
 * @param games how many they are
 * @param leastForHome the least point difference of the home side over all of them; every whole number from here to the
 *     most can happen
 * @param homeTarget the targets of the games that the home side wins, added up
 * @param homeNarrow the most that the losers of those games can have when they end at the target, added up
 * @param reachTarget no game is stopped by time
 */
record OpenPoints(
        int games,
        long leastForHome,
        long mostForHome,
        int homeTarget,
        int homeNarrow,
        int awayTarget,
        int awayNarrow,
        boolean reachTarget) {
    static final OpenPoints NONE = new OpenPoints(0, 0, 0, 0, 0, 0, 0, true);

    static OpenPoints of(Games kind, int home, int away) {
        long least = kind.leastMargin();
        long most = kind.mostMargin();
        int narrow = Math.max(0, kind.target() - kind.leastMargin());
        return new OpenPoints(
                home + away,
                least * home - most * away,
                most * home - least * away,
                kind.target() * home,
                narrow * home,
                kind.target() * away,
                narrow * away,
                kind.reachesTarget());
    }

    OpenPoints and(OpenPoints other) {
        return new OpenPoints(
                games + other.games,
                leastForHome + other.leastForHome,
                mostForHome + other.mostForHome,
                homeTarget + other.homeTarget,
                homeNarrow + other.homeNarrow,
                awayTarget + other.awayTarget,
                awayNarrow + other.awayNarrow,
                reachTarget && other.reachTarget);
    }

    /** The same games with the sides changed. */
    OpenPoints swapped() {
        return new OpenPoints(
                games, -mostForHome, -leastForHome, awayTarget, awayNarrow, homeTarget, homeNarrow, reachTarget);
    }
}
