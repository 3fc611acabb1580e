package tiewright.http.pieces;

import java.time.Instant;
import java.util.List;
import tiewright.wording.Words;

/**
 * What stands round every page: whose page it is, of which event and version, and how old it is.
 *
 * @param speech the language of the page
 * @param title whose and what; the page's only h1
 * @param eventLine the event, its day and place
 * @param versionLine which version of the event the page shows ("Version 14")
 * @param asOfLine when the page was made ("as of 13:20")
 * @param heardLine when the desk was last heard from ("last heard from the desk at 13:18")
 * @param roleLine as whom the reader is here, empty for the public
 * @param nav the pages that this reader needs most
 * @param more the others, folded on a phone; empty where {@code nav} holds all
 * @param due deadlines of the reader that no page may hide
 * @param serverNow the service's clock when the page was made; countdowns trust it and not the phone's clock
 */
public record Frame(
        Speech speech,
        String title,
        String eventLine,
        String versionLine,
        String asOfLine,
        String heardLine,
        String roleLine,
        List<NavLink> nav,
        List<NavLink> more,
        List<Countdown> due,
        Instant serverNow) {

    public Frame {
        nav = List.copyOf(nav);
        more = List.copyOf(more);
        due = List.copyOf(due);
    }

    public String lang() {
        return speech.tag();
    }

    /** What makes the page's sentences. */
    public Words words() {
        return speech.words();
    }

    /** The reader is on one of them: their list stands open. */
    public boolean isOnMore() {
        return more.stream().anyMatch(NavLink::current);
    }
}
