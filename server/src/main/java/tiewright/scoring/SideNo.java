package tiewright.scoring;

/** The two sides of a game: ONE is the side named first (home), TWO the other (away). */
public enum SideNo {
    ONE,
    TWO;

    public SideNo other() {
        return this == ONE ? TWO : ONE;
    }

    /** The points of this side in a score written side one first. */
    public int pointsIn(Score score) {
        return this == ONE ? score.home() : score.away();
    }

    /** A score, side one first, in which this side has {@code own} points. */
    public Score score(int own, int other) {
        return this == ONE ? new Score(own, other) : new Score(other, own);
    }
}
