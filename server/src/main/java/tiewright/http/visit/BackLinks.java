package tiewright.http.visit;

import tiewright.event.Role;
import tiewright.http.pieces.NavLink;

/** The ways back from a page to where its reader began. */
public final class BackLinks {
    public static final NavLink TO_ORGANISER = new NavLink("/organiser", "Back to all steps", false);

    private static final NavLink TO_DESK = new NavLink("/desk", "Back to the desk", false);

    private BackLinks() {}

    /** The page that an official came from. */
    public static NavLink home(Visit visit) {
        return visit.role() == Role.ORGANISER ? TO_ORGANISER : TO_DESK;
    }
}
