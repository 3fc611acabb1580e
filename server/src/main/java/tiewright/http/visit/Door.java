package tiewright.http.visit;

import io.javalin.security.RouteRole;
import java.util.Locale;
import java.util.Set;
import tiewright.event.Role;

/** Who may open a page: the roles whose personal links fit. */
public enum Door implements RouteRole {
    ANYBODY(Set.of(Role.values())),
    CLUB(Set.of(Role.PLAYER, Role.CAPTAIN)),
    CAPTAIN(Set.of(Role.CAPTAIN)),
    /** What a club keeps for itself: a link of its captain opens it once it is let in. */
    NOTES(Set.of(Role.CAPTAIN)),
    CARDS(Set.of(Role.VOLUNTEER, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    CARDS_OR_CAPTAIN(Set.of(Role.CAPTAIN, Role.VOLUNTEER, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    COURT(Set.of(Role.CAPTAIN, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    STOP(Set.of(Role.CAPTAIN, Role.VOLUNTEER, Role.DESK, Role.ORGANISER, Role.REFEREE)),
    DESK(Set.of(Role.DESK, Role.ORGANISER, Role.REFEREE)),
    OFFICIALS(Set.of(Role.ORGANISER, Role.REFEREE)),
    ORGANISER(Set.of(Role.ORGANISER));

    private final Set<Role> roles;

    Door(Set<Role> roles) {
        this.roles = roles;
    }

    public boolean opensFor(Role role) {
        return roles.contains(role);
    }

    /** A word for it in the sentence that says for whom a page is. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
