package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who looks, who acts, who is meant by a name. */
class WhoIsWhoTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final Viewer PLAYER_OF_N = Viewer.player(N, N1);

    @Test
    void a_captain_and_a_player_are_of_a_club_and_others_need_none() {
        assertThatThrownBy(() -> Viewer.of(Role.CAPTAIN)).hasMessage("a captain belongs to a club");
        assertThatThrownBy(() -> Viewer.of(Role.PLAYER)).hasMessage("a player belongs to a club");
        assertThat(PLAYER_OF_N.player()).contains(N1);
        assertThat(PLAYER_OF_N.isCaptainOf(N)).isFalse();
        assertThat(PLAYER_OF_N.isOf(N)).isTrue();
        assertThat(PLAYER_OF_N.isOf(S)).isFalse();
        assertThat(Viewer.captain(N).isCaptainOf(S)).isFalse();
        assertThat(Viewer.PUBLIC.isOf(N)).isFalse();
    }

    @Test
    void the_neutral_person_is_known_by_the_link_or_in_old_events_by_its_label() {
        Actor ola = new Actor(Role.DESK, Optional.empty(), "Ola", "", Optional.of("L7"));
        Actor other = new Actor(Role.DESK, Optional.empty(), "Ola", "", Optional.of("L8"));
        SetUpFact.OpeningChosen bound = new SetUpFact.OpeningChosen(true, Optional.of("Ola"), Optional.of("L7"));
        assertThat(bound.isNeutral(ola)).isTrue();
        assertThat(bound.isNeutral(other)).isFalse();
        SetUpFact.OpeningChosen named = new SetUpFact.OpeningChosen(true, Optional.of("Ola"));
        assertThat(named.isNeutral(other)).isTrue();
        assertThat(named.isNeutral(Days.desk())).isFalse();
        assertThat(new SetUpFact.OpeningChosen(true, Optional.empty()).isNeutral(ola))
                .isFalse();
        assertThat(new SetUpFact.OpeningChosen(false, Optional.of("Ola")).isNeutral(ola))
                .isFalse();
    }

    @Test
    void two_entries_are_of_one_source_when_name_link_and_device_are() {
        Actor one = new Actor(Role.DESK, Optional.empty(), "desk", "d", Optional.of("L1"));
        assertThat(one.isSameSourceAs(new Actor(Role.REFEREE, Optional.of(N), "desk", "d", Optional.of("L1"))))
                .isTrue();
        for (Actor other : List.of(
                new Actor(Role.DESK, Optional.empty(), "desk 2", "d", Optional.of("L1")),
                new Actor(Role.DESK, Optional.empty(), "desk", "e", Optional.of("L1")),
                new Actor(Role.DESK, Optional.empty(), "desk", "d"))) {
            assertThat(one.isSameSourceAs(other)).isFalse();
        }
    }

    @Test
    void two_people_are_two_in_any_order() {
        Days day = Days.oneTie().fact(new OfficialFact.TwoPeople(N1, PlayerId.of("S1")));
        Disputes disputes = day.event().disputes();
        assertThat(disputes.areTwoPeople(N1, PlayerId.of("S1"))).isTrue();
        assertThat(disputes.areTwoPeople(PlayerId.of("S1"), N1)).isTrue();
        assertThat(disputes.areTwoPeople(N1, PlayerId.of("S2"))).isFalse();
        assertThat(disputes.areTwoPeople(PlayerId.of("S2"), PlayerId.of("S1"))).isFalse();
        assertThat(disputes.areTwoPeople(PlayerId.of("S1"), PlayerId.of("N2"))).isFalse();
        assertThat(disputes.areTwoPeople(PlayerId.of("N2"), N1)).isFalse();
    }
}
