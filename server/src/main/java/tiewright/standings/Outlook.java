package tiewright.standings;

/**
 * What is known of a club's place when some of the future is fixed.
 *
 * @param places no place outside can happen
 * @param bestSure the best place that surely can happen, {@link #NONE} while that is open
 * @param worstSure the worst place that surely can happen, 0 while that is open
 * @param mayNeedLot in some of it a lot decides
 */
record Outlook(PlaceRange places, int bestSure, int worstSure, boolean mayNeedLot) {
    private static final int NONE = Integer.MAX_VALUE;

    /** Both ends can happen. */
    static Outlook of(int best, int worst, boolean lot) {
        return new Outlook(new PlaceRange(best, worst), best, worst, lot);
    }

    /** Only a bound: perhaps no place of the range can happen in just this way. */
    Outlook asBound() {
        return new Outlook(places, NONE, 0, mayNeedLot);
    }

    Outlook and(Outlook other) {
        return new Outlook(
                places.and(other.places),
                Math.min(bestSure, other.bestSure),
                Math.max(worstSure, other.worstSure),
                mayNeedLot || other.mayNeedLot);
    }

    /** Both ends of the range can happen. */
    boolean isExact() {
        return bestSure == places.best() && worstSure == places.worst();
    }
}
