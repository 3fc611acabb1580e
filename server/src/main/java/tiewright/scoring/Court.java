package tiewright.scoring;

/** The two halves of a side's court, as its own players see them when they face the net. */
public enum Court {
    RIGHT,
    LEFT;

    public Court other() {
        return this == RIGHT ? LEFT : RIGHT;
    }

    /** Even points are served from the right, odd ones from the left. */
    static Court ofParity(int points) {
        return points % 2 == 0 ? RIGHT : LEFT;
    }
}
