package tiewright.standings;

import java.util.List;

/**
 * How can the point differences of level clubs part them while the points of some games are open?
 *
 * <p>Every open tie moves as many points to one club as from the other, within its limits: a flow. By Hoffman's
 * circulation theorem (1960) differences within given limits can be reached, in whole points, exactly if for every set of
 * clubs the sum of the lower limits is at most what the set can reach and the sum of the upper limits is at least what it
 * must reach. With one club's difference written x, each condition is a limit on x, so a split is possible if some whole
 * x meets them all. Exact; 3^(n-1) splits times 2^n conditions for n clubs.
 */
final class PointSplits {
    private final int[] level;
    private final int own;
    private final long[] least;
    private final long[] most;

    /** @param own the position in {@code level} of the club that asks */
    PointSplits(int[] level, int own, Value[] known, boolean among, List<OpenOutcome> open) {
        this.level = level;
        this.own = own;
        this.least = new long[1 << level.length];
        this.most = new long[1 << level.length];
        for (int set = 1; set < least.length; set++) {
            for (int i = 0; i < level.length; i++) {
                if ((set >> i & 1) == 1) {
                    least[set] += known[i].difference();
                    most[set] += known[i].difference();
                }
            }
        }
        open.forEach(outcome -> widen(outcome, among));
    }

    private void widen(OpenOutcome outcome, boolean among) {
        int home = bit(outcome.tie().home());
        int away = bit(outcome.tie().away());
        if (among && (home == 0 || away == 0)) {
            return;
        }
        for (int set = 1; set < least.length; set++) {
            boolean hasHome = (set & home) != 0;
            boolean hasAway = (set & away) != 0;
            if (hasHome && !hasAway) {
                least[set] += outcome.points().leastForHome();
                most[set] += outcome.points().mostForHome();
            } else if (hasAway && !hasHome) {
                least[set] -= outcome.points().mostForHome();
                most[set] -= outcome.points().leastForHome();
            }
        }
    }

    private int bit(int club) {
        for (int i = 0; i < level.length; i++) {
            if (level[i] == club) {
                return 1 << i;
            }
        }
        return 0;
    }

    List<Split> possible() {
        return Standing.possible(level, own, this::canBe);
    }

    /** Is there a whole x so that the clubs ahead have x + 1 or more, the level ones x, those behind x - 1 or less? */
    private boolean canBe(Standing[] standing) {
        long lowest = least[1 << own];
        long highest = most[1 << own];
        for (int set = 1; set < least.length && lowest <= highest; set++) {
            highest = Math.min(highest, highestBy(set, standing));
            lowest = Math.max(lowest, lowestBy(set, standing));
        }
        return lowest <= highest;
    }

    /** The largest x at which the lower limits of a set add up to no more than it can reach. */
    private long highestBy(int set, Standing[] standing) {
        long fixed = 0;
        int times = 0;
        for (int i = 0; i < standing.length; i++) {
            if ((set >> i & 1) == 1) {
                fixed += standing[i] == Standing.AHEAD ? 1 : standing[i] == Standing.BEHIND ? least[1 << i] : 0;
                times += standing[i] == Standing.BEHIND ? 0 : 1;
            }
        }
        if (times == 0) {
            return fixed <= most[set] ? Long.MAX_VALUE : Long.MIN_VALUE;
        }
        return Math.floorDiv(most[set] - fixed, (long) times);
    }

    /** The smallest x at which the upper limits of a set add up to no less than it must reach. */
    private long lowestBy(int set, Standing[] standing) {
        long fixed = 0;
        int times = 0;
        for (int i = 0; i < standing.length; i++) {
            if ((set >> i & 1) == 1) {
                fixed += standing[i] == Standing.BEHIND ? -1 : standing[i] == Standing.AHEAD ? most[1 << i] : 0;
                times += standing[i] == Standing.AHEAD ? 0 : 1;
            }
        }
        if (times == 0) {
            return fixed >= least[set] ? Long.MIN_VALUE : Long.MAX_VALUE;
        }
        return -Math.floorDiv(fixed - least[set], (long) times);
    }
}
