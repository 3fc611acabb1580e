package tiewright.http.pieces;

/**
 * A tie in one line.
 *
 * @param homeScore rubbers won by the home club, empty before play
 * @param winner 1 home, 2 away, 0 nobody yet or level
 * @param when its time ("13:20")
 * @param where its court ("Court 3")
 * @param href the tie's page, empty for no link
 * @param linkWords words of that link
 * @param old a published time that no longer holds, shown struck; empty if it never changed
 * @param why the notice that changed it, and its reason
 * @param expected when it is likely to begin, in words; empty where nothing can be said
 */
public record TieLine(
        String home,
        String homeScore,
        String away,
        String awayScore,
        int winner,
        String when,
        String where,
        State state,
        String note,
        String href,
        String linkWords,
        String old,
        String why,
        String expected) {

    public TieLine(
            String home,
            String homeScore,
            String away,
            String awayScore,
            int winner,
            String when,
            String where,
            State state,
            String note,
            String href,
            String linkWords) {
        this(home, homeScore, away, awayScore, winner, when, where, state, note, href, linkWords, "", "", "");
    }
}
