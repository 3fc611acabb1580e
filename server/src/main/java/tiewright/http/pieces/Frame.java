package tiewright.http.pieces;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.wording.Words;

/**
 * What stands round every page: whose page it is, how fresh, and the ways from it.
 *
 * @param speech the language of the page
 * @param title whose and what; the page's only h1
 * @param who the reader
 * @param alarms what somebody may have done in the name of the reader's club, in red, each with where to look
 * @param hurt where somebody who may stop a court goes when somebody is hurt; empty for all others
 */
public record Frame(
        Speech speech,
        String title,
        Named event,
        Reader who,
        Age age,
        List<NavLink> alarms,
        Optional<NavLink> hurt,
        Ways ways) {

    public Frame {
        alarms = List.copyOf(alarms);
    }

    /**
     * The event.
     *
     * @param name short, for the browser's title
     * @param line in full, for print
     * @param standstill that all play is stopped and until when, with where it can be ended for whoever may; empty while it goes on
     */
    public record Named(String name, String line, Optional<NavLink> standstill) {}

    /**
     * Whose page it is.
     *
     * @param name short, for the head
     * @param line in full, for the foot; empty for nobody in particular
     * @param styles stylesheets of the reader's role, loaded after the one that everybody loads
     */
    public record Reader(String name, String line, List<String> styles) {
        public Reader {
            styles = List.copyOf(styles);
        }
    }

    /**
     * How old the page is.
     *
     * @param version which version of the event the page shows ("Version 14")
     * @param asOf when the page was made ("as of 13:20")
     * @param heard when the desk was last heard ("heard 13:18")
     * @param now the service's clock when the page was made; countdowns trust it and not the phone's clock
     * @param posted the page answers a form: it cannot be fetched again, and stays as it was made
     */
    public record Age(String version, String asOf, String heard, Instant now, boolean posted) {}

    public String lang() {
        return speech.tag();
    }

    /** What makes the page's sentences. */
    public Words words() {
        return speech.words();
    }

    /** For the browser: which page, of which event. */
    public String fullTitle() {
        return title.equals(event.name()) ? title : title + ", " + event.name();
    }
}
