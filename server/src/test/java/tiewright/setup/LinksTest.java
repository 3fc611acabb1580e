package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Actor;
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
                "somebody " + (hashes + 1),
                "%064x".formatted(++hashes));
    }

    @Test
    void links_are_named_in_order_and_a_hash_is_used_once() {
        IssueLink first = link(Role.ORGANISER, "", "");
        day.does(first).does(link(Role.CAPTAIN, "N", "")).does(link(Role.PLAYER, "N", "N1"));
        assertThat(day.event().links()).containsOnlyKeys("L1", "L2", "L3");
        assertThat(Said.codes(day, first)).containsExactly("setup.label-taken", "setup.link-is-there");
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

    /** The record tells people apart by the labels of their links. */
    @Test
    void no_two_links_in_use_have_one_label() {
        day.does(labelled(Role.ORGANISER, "first organiser")).does(labelled(Role.DESK, "desk 1"));
        for (String label : new String[] {"desk 1", " Desk 1 ", "DESK 1"}) {
            assertThat(Said.codes(day, labelled(Role.REFEREE, label))).containsExactly("setup.label-taken");
        }
        day.does(new RevokeLink("L2")).does(labelled(Role.DESK, "desk 1"));
        assertThat(day.event().links().get("L3").label()).isEqualTo("desk 1");
    }

    private IssueLink labelled(Role role, String label) {
        return new IssueLink(role, Optional.empty(), Optional.empty(), label, "%064x".formatted(++hashes));
    }

    /** Whoever was chosen is one link: another with the same label is somebody else. */
    @Test
    void the_neutral_person_is_the_link_and_not_its_label() {
        day.does(labelled(Role.ORGANISER, "first organiser"))
                .does(labelled(Role.DESK, "Ida Brandt"))
                .does(new ChooseOpening(true, Optional.of("Ida Brandt")))
                .does(new RevokeLink("L2"))
                .does(labelled(Role.DESK, "Ida Brandt"));
        SetUpFact.OpeningChosen chosen = day.event().opening().orElseThrow();
        assertThat(chosen.isNeutral(by("L2", Role.DESK, Optional.empty()))).isTrue();
        assertThat(chosen.isNeutral(by("L3", Role.DESK, Optional.empty()))).isFalse();
        day.does(new ChooseOpening(true, Optional.of("Ida Brandt")));
        assertThat(day.event().opening().orElseThrow().isNeutral(by("L3", Role.DESK, Optional.empty())))
                .isTrue();
    }

    @Test
    void a_label_that_two_links_in_use_had_before_names_nobody() {
        for (String name : new String[] {"L40", "L41"}) {
            day.fact(new SetUpFact.LinkIssued(
                    name, Role.DESK, Optional.empty(), Optional.empty(), "Ida Brandt", "hash of " + name));
        }
        ChooseOpening byIda = new ChooseOpening(true, Optional.of("Ida Brandt"));
        assertThat(Said.codes(day, byIda)).containsExactly("setup.neutral-has-two-links");
        day.does(link(Role.ORGANISER, "", "")).does(new RevokeLink("L41")).does(byIda);
    }

    private Actor by(String link, Role role, Optional<ClubId> club) {
        return new Actor(role, club, day.event().links().get(link).label(), "", Optional.of(link));
    }

    private Actor captain(String link) {
        return by(link, Role.CAPTAIN, day.event().links().get(link).club());
    }

    @Test
    void a_captain_makes_replaces_and_ends_the_links_of_the_own_club_alone() {
        day.does(link(Role.CAPTAIN, "N", "")).does(link(Role.CAPTAIN, "S", "")).by(captain("L1"));
        assertThat(Said.codes(day, link(Role.CAPTAIN, "S", ""))).containsExactly("setup.not-your-links");
        assertThat(Said.codes(day, link(Role.DESK, "", ""))).containsExactly("setup.not-your-links");
        assertThat(Said.codes(day, new RevokeLink("L2"))).containsExactly("setup.not-your-links");
        assertThat(Said.codes(day, new LetLinkIn("L2"))).containsExactly("setup.no-such-link");
        day.does(link(Role.CAPTAIN, "N", "N3"))
                .does(link(Role.PLAYER, "N", "N1"))
                .does(new ReplaceLink("L1", "a".repeat(64)))
                .by(captain("L5"))
                .does(new RevokeLink("L3"));
        assertThat(day.event().entries().linksOf(ClubId.of("N")).waiting()).isEmpty();
        assertThat(day.event().links().get("L1").revoked()).isTrue();
        assertThat(day.event().links().get("L5").label())
                .isEqualTo(day.event().links().get("L1").label());
        assertThat(day.event().notices()).isEmpty();
    }

    @Test
    void a_link_that_was_not_let_in_lets_in_makes_and_ends_nothing() {
        day.does(link(Role.CAPTAIN, "N", ""))
                .at("10:00")
                .does(link(Role.CAPTAIN, "N", "N2"))
                .does(link(Role.CAPTAIN, "N", "N3"))
                .by(captain("L2"));
        assertThat(Said.codes(day, new LetLinkIn("L2"))).containsExactly("setup.link-not-let-in");
        assertThat(Said.codes(day, new LetLinkIn("L3"))).containsExactly("setup.link-not-let-in");
        assertThat(Said.codes(day, link(Role.CAPTAIN, "N", ""))).containsExactly("setup.link-not-let-in");
        assertThat(Said.codes(day, new RevokeLink("L1"))).containsExactly("setup.link-not-let-in");
        day.by(captain("L1")).does(new LetLinkIn("L2"));
        assertThat(Said.codes(day, new LetLinkIn("L2"))).containsExactly("setup.let-in-already");
        day.by(captain("L2")).does(new LetLinkIn("L3"));
        assertThat(day.event().entries().linksOf(ClubId.of("N")).waiting()).isEmpty();
    }

    @Test
    void everybody_is_told_of_a_captains_link_that_somebody_else_makes_or_ends_after_the_first() {
        day.does(link(Role.CAPTAIN, "N", "")).does(link(Role.PLAYER, "N", "N1"));
        assertThat(day.event().notices()).isEmpty();
        day.at("10:00").does(link(Role.CAPTAIN, "N", "N2")).does(new ReplaceLink("L1", "b".repeat(64)));
        day.does(new RevokeLink("L3"));
        assertThat(day.event().notices().stream()
                        .map(posted -> posted.notice().text().code()))
                .containsExactly("notices.link-made", "notices.link-replaced", "notices.link-ended");
    }

    @Test
    void once_sheets_are_sealed_everybody_is_told_also_of_what_the_club_does_itself() {
        Days sealed = Days.oneTie().by(Days.organiser()).does(link(Role.CAPTAIN, "N", ""));
        sealed.by(new Actor(Role.CAPTAIN, Optional.of(ClubId.of("N")), "somebody 1", "", Optional.of("L1")));
        sealed.does(link(Role.CAPTAIN, "N", "N2"));
        assertThat(sealed.event().notices()).isEmpty();
        sealed.opened("A1").at("12:00").does(link(Role.CAPTAIN, "N", "N3")).does(link(Role.PLAYER, "N", "N4"));
        assertThat(sealed.event().notices()).hasSize(1);
    }

    @Test
    void where_an_organiser_also_captains_the_neutral_person_handles_captains_links_after_the_first() {
        day.does(labelled(Role.ORGANISER, "first organiser"))
                .does(labelled(Role.REFEREE, "Ida Brandt"))
                .does(new ChooseOpening(true, Optional.of("Ida Brandt")))
                .does(link(Role.CAPTAIN, "N", ""))
                .at("10:00");
        assertThat(Said.codes(day, link(Role.CAPTAIN, "N", "N2"))).containsExactly("setup.link-needs-neutral");
        assertThat(Said.codes(day, new RevokeLink("L3"))).containsExactly("setup.link-needs-neutral");
        assertThat(Said.codes(day, new ReplaceLink("L3", "c".repeat(64)))).contains("setup.link-needs-neutral");
        day.does(link(Role.PLAYER, "N", "N2")).does(link(Role.CAPTAIN, "S", ""));
        day.by(by("L2", Role.REFEREE, Optional.empty()))
                .does(link(Role.CAPTAIN, "N", "N3"))
                .does(new RevokeLink("L3"));
    }

    /** A captain's link may replace sealed sheets, so the desk cannot make one. */
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
        assertThat(Said.codes(day.by(Days.captain("S")), link(Role.PLAYER, "N", "N1")))
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
