package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.SetUpFact;

class LinksTest {
    private final Days day = Days.aDay().clubs("N", "S").by(Days.organiser());
    private int hashes;

    private IssueLink link(Role role, String club, String player) {
        return new IssueLink(
                role,
                club.isEmpty() ? Optional.empty() : Optional.of(ClubId.of(club)),
                player.isEmpty() ? Optional.empty() : Optional.of(PlayerId.of(player)),
                "somebody",
                "%064x".formatted(++hashes));
    }

    @Test
    void links_are_named_in_order_and_a_hash_is_used_once() {
        IssueLink first = link(Role.ORGANISER, "", "");
        day.does(first).does(link(Role.CAPTAIN, "N", "")).does(link(Role.PLAYER, "N", "N1"));
        assertThat(day.event().links()).containsOnlyKeys("L1", "L2", "L3");
        assertThat(Said.codes(day, first)).containsExactly("setup.link-is-there");
        assertThat(Said.codes(day, new IssueLink(Role.DESK, Optional.empty(), Optional.empty(), "desk", "ABC")))
                .containsExactly("setup.not-a-hash");
    }

    @Test
    void a_link_of_a_club_names_the_club_and_its_player() {
        assertThat(Said.codes(day, link(Role.CAPTAIN, "", ""))).containsExactly("setup.link-needs-club");
        assertThat(Said.codes(day, link(Role.PLAYER, "N", ""))).containsExactly("setup.link-needs-player");
        assertThat(Said.codes(day, link(Role.PLAYER, "N", "S1"))).containsExactly("setup.player-not-in-squad");
        assertThat(Said.codes(day, link(Role.CAPTAIN, "X", ""))).containsExactly("setup.no-such-club");
        assertThat(Said.codes(day, link(Role.DESK, "N", ""))).containsExactly("setup.link-has-no-club");
        assertThat(Said.codes(day, link(Role.PUBLIC, "", ""))).containsExactly("setup.public-needs-no-link");
        assertThat(Said.codes(day, new IssueLink(Role.DESK, Optional.empty(), Optional.empty(), " ", "0".repeat(64))))
                .containsExactly("setup.missing.label");
    }

    /** A captain's link reads sealed sheets, so the desk cannot make one. */
    @Test
    void the_desk_makes_links_of_players_and_volunteers_only() {
        day.by(Days.desk())
                .does(link(Role.VOLUNTEER, "", ""))
                .does(link(Role.PLAYER, "S", "S3"))
                .does(new RevokeLink("L1"));
        for (Role role : new Role[] {Role.DESK, Role.REFEREE, Role.ORGANISER}) {
            assertThat(Said.codes(day, link(role, "", ""))).containsExactly("setup.not-your-links");
        }
        assertThat(Said.codes(day, link(Role.CAPTAIN, "N", ""))).containsExactly("setup.not-your-links");
        assertThat(Said.codes(day.by(Days.captain("N")), link(Role.PLAYER, "N", "N1")))
                .containsExactly("setup.not-your-links");
    }

    @Test
    void the_last_link_of_an_organiser_stays() {
        day.does(link(Role.ORGANISER, "", ""));
        assertThat(Said.codes(day, new RevokeLink("L1"))).containsExactly("setup.last-organiser-link");
        day.does(link(Role.ORGANISER, "", "")).does(new RevokeLink("L1"));
        assertThat(Said.codes(day, new RevokeLink("L1"))).containsExactly("setup.revoked-already");
        assertThat(Said.codes(day, new RevokeLink("L2"))).containsExactly("setup.last-organiser-link");
        assertThat(Said.codes(day, new RevokeLink("L7"))).containsExactly("setup.no-such-link");
    }

    @Test
    void the_opening_is_chosen_and_a_later_change_is_a_notice() {
        ChooseOpening byIda = new ChooseOpening(true, Optional.of("Ida Brandt"));
        assertThat(Said.codes(day, byIda)).containsExactly("setup.neutral-has-no-link");
        SetUpFact.LinkIssued link =
                new SetUpFact.LinkIssued("L40", Role.DESK, Optional.empty(), Optional.empty(), "Ida Brandt", "h40");
        day.fact(link).does(byIda);
        assertThat(Said.codes(day, byIda)).containsExactly("setup.opening-unchanged");
        assertThat(Said.codes(day, new ChooseOpening(false, Optional.of("Ida Brandt"))))
                .containsExactly("setup.neutral-not-needed");
        assertThat(Said.codes(day.by(Days.desk()), new ChooseOpening(true, Optional.empty())))
                .containsExactly("setup.organiser-only");
        Days sealed = Days.oneTie().opened("A1").fact(link).by(Days.organiser()).does(byIda);
        assertThat(sealed.event().notices()).hasSize(1);
    }
}
