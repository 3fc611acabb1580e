package tiewright.conditions;

/** The 33 headings under which the conditions of play are printed, in this order. */
public enum Heading {
    RUBBERS,
    STOPPING,
    SHEET_DEADLINE,
    EXCHANGE,
    ORDER_OF_STRENGTH,
    CHALLENGE,
    WRONG_ORDER,
    CHANGES,
    SHORT_SQUAD,
    BOTH_SHORT,
    LATENESS,
    CLOCK,
    WALKOVER,
    RETIREMENT,
    WITHDRAWAL,
    TIE_POINTS,
    LEVEL_TEAMS,
    SEPARATED,
    OVERTIME,
    DECIDER,
    SCORING,
    REST,
    WARM_UP,
    MEDICAL,
    WEATHER,
    HEAT,
    REPORTING,
    CORRECTION,
    PROTEST,
    ELIGIBILITY,
    DRAW,
    PENALTIES,
    WHO_ACTS;

    /** 1 to 33, as printed. */
    public int number() {
        return ordinal() + 1;
    }

    /** The key of its words. */
    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
