package tiewright.timetable;

/**
 * Two pieces that have to do with each other.
 *
 * @param a number of the one, which comes first where the kind has an order
 */
record Link(Kind kind, int a, int b) {
    enum Kind {
        /** a club plays in both, in different ties */
        CLUB,
        /** the round of a is played before that of b */
        ROUND,
        /** b waits for the outcome of a */
        SOURCE,
        /** both begin at the same time */
        TOGETHER,
        /** rubbers of one tie in their order */
        RUBBERS,
        /** rubbers of one tie that may have a player in common */
        PLAYERS
    }
}
