package tiewright.http.pieces;

/**
 * A tie beside the number of its court: on now, or next.
 *
 * @param court its number alone, empty while unknown
 * @param old a published time that no longer holds, shown struck; empty if it never changed
 * @param detail what is played there now, or when it begins and whose sheets are in
 * @param own it is a tie of the reader's club
 */
public record CourtRow(
        String court, String href, Side home, Side away, State state, String old, String detail, boolean own) {

    /** @param score rubbers won, empty before play */
    public record Side(String name, String score, boolean ahead) {}
}
