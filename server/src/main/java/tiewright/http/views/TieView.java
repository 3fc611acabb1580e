package tiewright.http.views;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.Moved;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.State;

/**
 * One tie, the answer first: what counts now, then both sheets, closed or turned over with the scores beside the names.
 *
 * @param faces both closed sheets; empty once they are open
 * @param rubbers the names with their scores; empty before the opening
 * @param ways what this reader can do about it
 */
public record TieView(Head head, List<Face> faces, List<Rubber> rubbers, Papers papers, List<Way> ways, CopyText copy) {
    public TieView {
        faces = List.copyOf(faces);
        rubbers = List.copyOf(rubbers);
        ways = List.copyOf(ways);
    }

    /**
     * @param homeScore rubbers won; empty before the first
     * @param winner 1 home, 2 away, 0 nobody
     * @param where pool and round, court, time
     */
    public record Head(
            String home,
            String homeScore,
            String away,
            String awayScore,
            int winner,
            String where,
            State state,
            Next next) {}

    /**
     * @param said what follows, in a sentence; may be empty
     * @param opens until when both sheets stay closed; empty once they are open and while no time is known
     */
    public record Next(String said, Optional<Instant> opens) {}

    /**
     * A closed sheet: it looks the same whatever is in it.
     *
     * @param in sealed and at the desk
     */
    public record Face(String club, State state, boolean in, int bars) {}

    /** A rubber, home above. Without names it is a decider whose pairs are still closed: then its faces say who is in. */
    public record Rubber(
            String number, boolean isDecider, Line home, Line away, int winner, String note, List<Face> faces) {}

    /** @param points empty before the end */
    public record Line(List<String> players, String points) {}

    /**
     * What proves it, and what was changed.
     *
     * @param opened in a line when both were opened; empty before
     * @param receipts out at the deadline, before the opening
     * @param changes what was changed after the opening, through which door
     * @param times every published time that no longer holds
     */
    public record Papers(String opened, List<Receipt> receipts, List<String> changes, List<Moved> times) {
        public Papers {
            receipts = List.copyOf(receipts);
            changes = List.copyOf(changes);
            times = List.copyOf(times);
        }
    }

    public record Way(NavLink link, String detail) {}
}
