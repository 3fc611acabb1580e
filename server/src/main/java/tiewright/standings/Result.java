package tiewright.standings;

/** How a tie ended for one club. */
public enum Result {
    WON,
    DRAWN,
    LOST,
    /** Neither club came: an awarded tie of two withdrawn clubs. Both have lost it. */
    LOST_BY_BOTH;

    /** @param rubbers won more than lost */
    static Result ofLead(int rubbers) {
        return rubbers > 0 ? WON : rubbers < 0 ? LOST : DRAWN;
    }

    /** The same tie seen by the other club. */
    public Result other() {
        return switch (this) {
            case WON -> LOST;
            case DRAWN -> DRAWN;
            case LOST -> WON;
            case LOST_BY_BOTH -> LOST_BY_BOTH;
        };
    }
}
