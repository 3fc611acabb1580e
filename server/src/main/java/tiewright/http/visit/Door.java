package tiewright.http.visit;

import io.javalin.security.RouteRole;
import java.util.Set;
import tiewright.event.Role;

/** Who may open a page: the roles whose personal links fit. */
public enum Door implements RouteRole {
    ANYBODY("everybody", Set.of(Role.values())),
    CLUB("the players and captains of a club", Set.of(Role.PLAYER, Role.CAPTAIN)),
    CAPTAIN("captains and their deputies", Set.of(Role.CAPTAIN)),
    /** What a club keeps for itself: a link of its captain opens it once it is let in. */
    NOTES("captains and their deputies whose link the club has let in", Set.of(Role.CAPTAIN)),
    CARDS("those who enter cards", Set.of(Role.VOLUNTEER, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    CARDS_OR_CAPTAIN(
            "those who enter cards and the captains of the tie",
            Set.of(Role.CAPTAIN, Role.VOLUNTEER, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    COURT("the desk and the captains of the tie", Set.of(Role.CAPTAIN, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    STOP(
            "the desk, those who enter cards and the captains of the tie",
            Set.of(Role.CAPTAIN, Role.VOLUNTEER, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    DESK("the desk", Set.of(Role.DESK, Role.ORGANISER, Role.REFEREE)),
    OFFICIALS("the organiser and the referee", Set.of(Role.ORGANISER, Role.REFEREE)),
    ORGANISER("the organiser", Set.of(Role.ORGANISER));

    private final String whom;
    private final Set<Role> roles;

    Door(String whom, Set<Role> roles) {
        this.whom = whom;
        this.roles = roles;
    }

    public boolean opensFor(Role role) {
        return roles.contains(role);
    }

    /** For whom it is, to stand in "This page is for …". */
    public String whom() {
        return whom;
    }
}
