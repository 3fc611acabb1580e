package tiewright.setup;

import tiewright.event.Refusal;
import tiewright.event.Role;

/** Who may make and take away links of which role. */
final class LinkRights {
    private LinkRights() {}

    static boolean mayHandle(Role by, Role link) {
        boolean small = link == Role.PLAYER || link == Role.VOLUNTEER;
        return by == Role.ORGANISER || by.isOfficial() && small;
    }

    static Refusal refusal(Role link) {
        return Refusal.of("setup.not-your-links").with("role", link.code()).at("role");
    }
}
