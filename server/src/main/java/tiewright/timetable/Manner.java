package tiewright.timetable;

import tiewright.conditions.TiePlay;

/**
 * How ties take courts and people.
 *
 * @param play whole ties side by side, or each rubber on its own
 * @param courtsPerTie courts that a whole tie takes at once; 1 where each rubber is planned on its own
 * @param lastRoundTogether ties of the last round of a pool begin together, where there are courts enough for it
 * @param umpires a club that does not play has to umpire each tie
 */
public record Manner(TiePlay play, int courtsPerTie, boolean lastRoundTogether, boolean umpires) {
    public Manner {
        if (courtsPerTie < 1) {
            throw new IllegalArgumentException("a tie takes a court or more, not " + courtsPerTie);
        }
    }

    /** One court for each tie, nobody umpires, a last round need not begin together. */
    static Manner of(TiePlay play) {
        return new Manner(play, 1, false, false);
    }

    Manner onCourts(int count) {
        return new Manner(play, count, lastRoundTogether, umpires);
    }

    Manner together(boolean lastRound) {
        return new Manner(play, courtsPerTie, lastRound, umpires);
    }

    Manner umpired(boolean byClubs) {
        return new Manner(play, courtsPerTie, lastRoundTogether, byClubs);
    }

    /** Each rubber on whatever court is free, instead of whole ties side by side. */
    Manner rubberByRubber() {
        return new Manner(TiePlay.RUBBER_BY_RUBBER, 1, lastRoundTogether, umpires);
    }
}
