package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.DoNext;

/**
 * The organiser's own page: what is left to do, what is done, and the ways out when the day breaks.
 *
 * @param headline how many steps are left
 * @param facts clubs, players, courts
 * @param running play has begun: what waits now stands first
 */
public record OrganiserView(
        String headline,
        String facts,
        List<Step> toDo,
        List<Step> done,
        DoNext next,
        boolean running,
        List<Group> groups,
        List<String> cautions) {
    public OrganiserView {
        toDo = List.copyOf(toDo);
        done = List.copyOf(done);
        groups = List.copyOf(groups);
        cautions = List.copyOf(cautions);
    }

    /**
     * One step of the set-up.
     *
     * @param detail how it stands, or why it matters
     * @param waits for what it waits, empty where it can be done now
     */
    public record Step(String what, String detail, String href, String action, String waits) {}

    /** Pages that belong together, each in a line. */
    public record Group(String title, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    public record Line(String what, String detail, String href, String action) {}
}
