package tiewright.http.visit;

import tiewright.event.Role;
import tiewright.http.pieces.NavLink;
import tiewright.wording.Words;

/** The ways back from a page to where its reader began. */
public final class BackLinks {
    private BackLinks() {}

    public static NavLink toOrganiser(Words words) {
        return new NavLink("/organiser", words.say("page-visit.back-to-all-steps"), false);
    }

    /** The page that an official came from. */
    public static NavLink home(Visit visit) {
        return visit.role() == Role.ORGANISER
                ? toOrganiser(visit.words())
                : new NavLink("/desk", visit.say("page-visit.back-to-the-desk"), false);
    }
}
