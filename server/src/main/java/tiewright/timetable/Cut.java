package tiewright.timetable;

import java.util.Arrays;
import java.util.Optional;

/** What can be cut off a day. */
public enum Cut {
    /** nothing: everything is played as the conditions say, each tie in its turn and on its courts */
    AS_IS("as-is"),
    /** nothing, but ties change turns and courts, so that the day ends earlier */
    ANOTHER_ORDER("another-order"),
    /** the rubbers of a tie are played on whatever court is free, no longer side by side */
    RUBBER_BY_RUBBER("rubber-by-rubber"),
    /** games to fewer points, scored as before */
    SHORTER_GAMES("shorter-games"),
    /** every rally scores a point */
    RALLY_SCORING("rally-scoring"),
    /** a tie may end level */
    NO_DECIDER("no-decider"),
    /** the last rounds of the pools that do not fit are not played */
    FEWER_ROUNDS("fewer-rounds"),
    /** pool ties that do not fit are not played, and their table points shared */
    SHARED_POINTS("shared-points"),
    /** the matches for places below the final are not played; a lot parts the clubs */
    PLACINGS_BY_LOT("placings-by-lot"),
    /** what does not fit is played on the next day */
    NEXT_DAY("next-day");

    private final String code;

    Cut(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Cut> parse(String code) {
        return Arrays.stream(values()).filter(cut -> cut.code.equals(code)).findFirst();
    }
}
