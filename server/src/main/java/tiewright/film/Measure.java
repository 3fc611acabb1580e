package tiewright.film;

/** What is counted in a filmed game. Rallies that nobody won, or of which nobody knows, are counted for nobody. */
public enum Measure {
    /** Of a pair: points. */
    SCORE("score"),
    /** Of a pair: rallies won, of those that somebody won. */
    RALLIES_WON("rallies_won", 40, 200),
    /** Of a pair: rallies won, of those in which it served. */
    WON_SERVING("won_serving", 40, 200),
    /** Of a pair: rallies won, of those in which it received. */
    WON_RECEIVING("won_receiving", 40, 200),
    /** Of a player: rallies that the own side won, of those in which the player served. */
    WON_OWN_SERVE("won_own_serve", 40, 200),
    /** Of a player: winners, of the rallies that somebody won. */
    EARNED("earned", 50, 150),
    /** Of a player: errors under pressure, of the rallies that somebody won. */
    FORCED("forced", 50, 150),
    /** Of a player: errors on a ball usually made, of the rallies that somebody won. */
    GAVE("gave", 50, 150),
    /** Of a player: serves missed, of those whose end is noted or that were returned. */
    SERVE_MISSED("serve_missed", 60, 100),
    /** Of a player: returns missed, of the serves to this player that were not missed. */
    RETURN_MISSED("return_missed", 60, 100),
    /** Of a player: deep returns, of those that are noted as deep or short. */
    DEEP_RETURN("deep_return", 40, 100),
    /** Of a player: rallies won after the own deep return. */
    WON_AFTER_DEEP_RETURN("won_after_deep_return", 40, 100),
    /** Of a player: rallies won after the own short return. */
    WON_AFTER_SHORT_RETURN("won_after_short_return", 40, 100),
    /** Of a pair: rallies won after its soft third ball. */
    WON_AFTER_SOFT_THIRD("won_after_soft_third", 40, 150),
    /** Of a pair: rallies won after its hard third ball. */
    WON_AFTER_HARD_THIRD("won_after_hard_third", 40, 150),
    /** Of a player: third balls to this player, of those to the own side. */
    THIRD_TO("third_to", 60, 150),
    /** Of a pair: rallies won after it signalled to stay. */
    WON_AFTER_STAY("won_after_stay", 40, 150),
    /** Of a pair: rallies won after it signalled to switch. */
    WON_AFTER_SWITCH("won_after_switch", 40, 150),
    /** Of the game: rallies noted. */
    RALLIES("rallies"),
    /** Of the game: rallies played again. */
    REPLAYED("replayed"),
    /** Of the game: rallies of which nobody knows who won them. */
    UNSURE("unsure");

    private final String code;
    private final int shownFrom;
    private final int actedOnFrom;

    Measure(String code) {
        this(code, 0, 0);
    }

    Measure(String code, int shownFrom, int actedOnFrom) {
        this.code = code;
        this.shownFrom = shownFrom;
        this.actedOnFrom = actedOnFrom;
    }

    public String code() {
        return code;
    }

    /**
     * Of how many a share is said at all; 0 for what is no share. An assumption of ours: at even odds the 95 % interval then reaches some 13 to 15
     * points either way.
     */
    public int shownFrom() {
        return shownFrom;
    }

    /** Of how many it is worth acting on: 7 to 10 points either way. */
    public int actedOnFrom() {
        return actedOnFrom;
    }
}
