package tiewright.http.visit;

import java.util.Map;
import tiewright.event.RubberNo;
import tiewright.event.Tie;

/** Addresses to which pages of other rooms lead. */
public final class Addresses {
    /** Where an order of play is made. */
    public static final String PLAN = "/organiser/plan";

    /** Where the desk sees this laptop's time and copies. */
    public static final String LAPTOP = "/desk/laptop";

    /** Which time is right, where that is in doubt. */
    public static final String CLOCK = "/desk/clock";

    /** What is carried away from an event. */
    public static final String KEEP = "/organiser/keep";

    /** All public pages as a folder. */
    public static final String STATIC_COPY = KEEP + "/site.zip";

    /** Where envelopes for all clubs are made, with the links that are missing. */
    public static final String ENVELOPES = "/organiser/links/envelopes";

    /** Where rubbers, courts and hours are reckoned. */
    public static final String BUDGET = "/organiser/budget";

    /** Where a broken day is planned anew. */
    public static final String BREAKS = "/organiser/day-breaks";

    /** Where an official says that two players of one name are two people. */
    public static final String TWO_PEOPLE = "/organiser/two-people";

    /** Below it a tie and a rubber: where a wrong score is put right on which others have built. */
    public static final String CORRECTION = "/organiser/correct";

    /** Pages to which the frame leads, by the key of their name among the words of the frame. */
    static final Map<String, String> OF = Map.ofEntries(
            Map.entry("now", "/"),
            Map.entry("times", "/plan"),
            Map.entry("ties", "/ties"),
            Map.entry("clubs-days", "/plan/clubs"),
            Map.entry("board", "/board"),
            Map.entry("paper", "/paper"),
            Map.entry("tables", "/tables"),
            Map.entry("knockout", "/bracket"),
            Map.entry("needs", "/needs"),
            Map.entry("clubs", "/clubs"),
            Map.entry("notices", "/notices"),
            Map.entry("conditions", "/conditions"),
            Map.entry("receipts", "/help/receipts"),
            Map.entry("how-it-works", "/help/day"),
            Map.entry("trust", "/trust"),
            Map.entry("hurt", "/hurt"),
            Map.entry("protests", "/protests"),
            Map.entry("my-ties", "/captain"),
            Map.entry("advice", "/captain/day"),
            Map.entry("squad", "/captain/squad"),
            Map.entry("playing-time", "/captain/playing-time"),
            Map.entry("record", "/captain/record"),
            Map.entry("tried", "/captain/record/tried"),
            Map.entry("past", "/captain/past"),
            Map.entry("film", "/captain/film"),
            Map.entry("club-links", "/captain/links"),
            Map.entry("rota", "/captain/rota"),
            Map.entry("desk", "/desk"),
            Map.entry("cards", "/cards"),
            Map.entry("check-in", "/desk/check-in"),
            Map.entry("clock", CLOCK),
            Map.entry("laptop", LAPTOP),
            Map.entry("safety", "/desk/safety"),
            Map.entry("log", "/log"),
            Map.entry("organise", "/organiser"),
            Map.entry("people", "/organiser/links"),
            Map.entry("plan", PLAN),
            Map.entry("breaks", BREAKS),
            Map.entry("rulings", "/organiser/rulings"),
            Map.entry("cases", "/organiser/cases"),
            Map.entry("post", "/organiser/notices"),
            Map.entry("sign", "/organiser/tables"));

    private Addresses() {}

    public static String correction(Tie tie, RubberNo rubber) {
        return CORRECTION + "/" + tie.id() + "/" + rubber;
    }
}
