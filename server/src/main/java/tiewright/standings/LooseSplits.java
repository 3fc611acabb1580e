package tiewright.standings;

import java.util.List;

/**
 * A bound on how sums or ratios of points can part level clubs while the points of some games are open: each club's value
 * is put between its own limits, as if the clubs were free of each other. Every split that can happen is among the
 * answers, but not every answer need be able to happen.
 */
final class LooseSplits {
    private final int[] level;
    private final int own;
    private final Value[] low;
    private final Value[] high;

    LooseSplits(int[] level, int own, Value[] known, boolean among, List<OpenOutcome> open) {
        this.level = level;
        this.own = own;
        this.low = known.clone();
        this.high = known.clone();
        for (int i = 0; i < level.length; i++) {
            OpenPoints points = OpenPoints.NONE;
            for (OpenOutcome outcome : open) {
                points = concerns(outcome, level[i], among) ? points.and(outcome.seenBy(level[i])) : points;
            }
            if (points.games() > 0) {
                limit(i, points);
            }
        }
    }

    private boolean concerns(OpenOutcome outcome, int club, boolean among) {
        return outcome.tie().has(club)
                && (!among
                        || (isLevel(outcome.tie().home())
                                && isLevel(outcome.tie().away())));
    }

    private boolean isLevel(int club) {
        for (int other : level) {
            if (other == club) {
                return true;
            }
        }
        return false;
    }

    /** Best: games won to nothing and lost narrowly; worst: the other way; very long games draw a ratio towards 1. */
    private void limit(int i, OpenPoints open) {
        Value known = low[i];
        Form form = known.form();
        boolean ratio = form == Form.RATIO;
        Value unlimited = ratio ? new Value(form, 1, 0) : new Value(form, Integer.MAX_VALUE, 0);
        if (!open.reachTarget()) {
            low[i] = new Value(form, 0, 1);
            high[i] = unlimited;
            return;
        }
        Value even = new Value(form, 1, 1);
        Value worst =
                new Value(form, known.won() + open.homeTarget(), known.lost() + open.homeNarrow() + open.awayTarget());
        Value best =
                new Value(form, known.won() + open.homeTarget() + open.awayNarrow(), known.lost() + open.awayTarget());
        low[i] = ratio ? min(worst, even) : worst;
        high[i] = ratio ? max(best, even) : unlimited;
    }

    List<Split> possible() {
        return Standing.possible(level, own, this::canBe);
    }

    /** Is there a value for the club between all the limits that this standing sets? */
    private boolean canBe(Standing[] standing) {
        Value over = low[own];
        Value under = high[own];
        for (int i = 0; i < standing.length; i++) {
            over = standing[i] == Standing.AHEAD ? over : max(over, low[i]);
            under = standing[i] == Standing.BEHIND ? under : min(under, high[i]);
        }
        int room = over.compareTo(under);
        return room < 0 || (room == 0 && canTake(over, standing));
    }

    /** With only this value left for the club: can those ahead have more, those behind less? */
    private boolean canTake(Value only, Standing[] standing) {
        for (int i = 0; i < standing.length; i++) {
            boolean stuck =
                    switch (standing[i]) {
                        case AHEAD -> high[i].compareTo(only) <= 0;
                        case BEHIND -> low[i].compareTo(only) >= 0;
                        case LEVEL -> false;
                    };
            if (stuck) {
                return false;
            }
        }
        return true;
    }

    private static Value min(Value one, Value other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private static Value max(Value one, Value other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
