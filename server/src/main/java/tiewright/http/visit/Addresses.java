package tiewright.http.visit;

import tiewright.event.RubberNo;
import tiewright.event.Tie;

/** Addresses to which pages of other rooms lead. */
public final class Addresses {
    /** Where an order of play is made. */
    public static final String PLAN = "/organiser/plan";

    /** Where a broken day is planned anew. */
    public static final String BREAKS = "/organiser/day-breaks";

    /** Below it a tie and a rubber: where a wrong score is put right on which others have built. */
    public static final String CORRECTION = "/organiser/correct";

    private Addresses() {}

    public static String correction(Tie tie, RubberNo rubber) {
        return CORRECTION + "/" + tie.id() + "/" + rubber;
    }
}
