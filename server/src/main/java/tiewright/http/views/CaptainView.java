package tiewright.http.views;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.DayLine;
import tiewright.http.pieces.NavLink;

/**
 * A captain's ties.
 *
 * @param due what has to be done, the nearest deadline first
 * @param cards the ties in which a score can be entered
 * @param own the captain's own next rubber; empty until the captain has said who it is
 * @param whoIsIt the squad, to say so
 * @param squad who has just played and who rests, with the way to the squad; empty before the first rubber
 * @param unread words that ask to read the conditions, with their version; empty once they were read
 */
public record CaptainView(
        List<Due> due,
        List<DayLine> day,
        List<NavLink> cards,
        Optional<Own> own,
        List<NavLink> whoIsIt,
        Optional<String> squad,
        Optional<String> unread,
        CalendarLink calendar) {

    /** A square of the day says won or lost. */
    public boolean hasPlayed() {
        return day.stream()
                .flatMap(line -> line.strip().stream())
                .anyMatch(rubber ->
                        rubber.kind().startsWith("won") || rubber.kind().startsWith("lost"));
    }

    /** @param where court and time, or what is to come; may be empty */
    public record Own(String what, String where, String href) {}

    /**
     * @param lines by when, and whose is in
     * @param main the press that does it
     * @param advice where to ask first; empty if nothing is left to ask
     * @param held it needs the captain now, whatever the time
     */
    public record Due(
            String title,
            List<String> lines,
            Optional<Instant> deadline,
            NavLink main,
            Optional<NavLink> advice,
            boolean held) {}
}
