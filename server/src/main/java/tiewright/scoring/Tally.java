package tiewright.scoring;

import java.util.Optional;

/** Counts the games of one rubber as they are read and knows when it is decided. */
final class Tally {
    private final int majority;
    private int played;
    private int one;
    private int two;
    private int decidedIn;

    Tally(int bestOf) {
        if (bestOf < 1 || bestOf % 2 == 0) {
            throw new IllegalArgumentException("a rubber is the best of an odd number of games, not " + bestOf);
        }
        this.majority = bestOf / 2 + 1;
    }

    /** Counts a game for the side with more points; a fault if the rubber was decided before. */
    Optional<ScoreFault> add(Score game) {
        Optional<ScoreFault> late = addUnfinished(game);
        one += game.home() > game.away() ? 1 : 0;
        two += game.away() > game.home() ? 1 : 0;
        if (decidedIn == 0 && Math.max(one, two) >= majority) {
            decidedIn = played;
        }
        return late;
    }

    /** Counts a game that nobody won. */
    Optional<ScoreFault> addUnfinished(Score game) {
        played++;
        return isDecided()
                ? Optional.of(new ScoreFault(ScoreFault.Kind.GAME_AFTER_DECIDED, played, game, decidedIn))
                : Optional.empty();
    }

    int played() {
        return played;
    }

    boolean isDecided() {
        return decidedIn > 0;
    }

    /** How many more games the leader needs. */
    int missing() {
        return Math.max(0, majority - Math.max(one, two));
    }

    int missingOf(SideNo side) {
        return Math.max(0, majority - (side == SideNo.ONE ? one : two));
    }
}
