package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who may notice which fact, not even by a number that went up. */
class ReachTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final Instant NOON = Days.moment("12:00");

    private static ExchangeFact.SheetSealed sealed(ClubId club) {
        return new ExchangeFact.SheetSealed(SHEETS, club, "1".repeat(64), false);
    }

    /** Whether the fact is noticed by the public, by the desk, by the captain of N, by a player of N, by the captain of S. */
    private static List<Boolean> noticed(Days day, Fact fact) {
        Event before = day.event();
        Event after = day.at("12:00").fact(fact).event();
        return List.of(
                        Viewer.PUBLIC,
                        Viewer.of(Role.DESK),
                        Viewer.captain(N),
                        Viewer.player(N, PlayerId.of("N1")),
                        Viewer.captain(S))
                .stream()
                .map(viewer -> after.reach().seq(viewer) == after.seq())
                .peek(seen -> assertThat(before.seq() + 1).isEqualTo(after.seq()))
                .toList();
    }

    @Test
    void most_facts_reach_everybody_and_count_as_a_version() {
        Days day = Days.oneTie();
        int version = day.event().reach().count();
        assertThat(noticed(day, new PlayFact.CourtCalled(TieId.of("A1"), Optional.empty(), "1")))
                .containsExactly(true, true, true, true, true);
        assertThat(day.event().reach().count()).isEqualTo(version + 1);
        assertThat(day.event().reach().heardAt()).contains(NOON);
    }

    @Test
    void the_first_sheet_of_a_side_reaches_everybody_and_the_next_its_own_club_only() {
        Days day = Days.oneTie();
        assertThat(noticed(day, sealed(N))).containsExactly(true, true, true, true, true);
        Reach before = day.event().reach();
        assertThat(noticed(day.at("12:30"), sealed(N))).containsExactly(false, false, true, true, false);
        assertThat(day.event().reach().count()).isEqualTo(before.count());
        assertThat(day.event().reach().heardAt()).isEqualTo(before.heardAt());
        assertThat(noticed(day, sealed(S))).containsExactly(true, true, true, true, true);
    }

    @Test
    void a_sheet_sealed_again_after_its_return_is_a_first_one() {
        Days day = Days.oneTie().fact(sealed(N), new ExchangeFact.SheetReturned(SHEETS, N, "why"));
        assertThat(noticed(day, sealed(N))).containsExactly(true, true, true, true, true);
    }

    @Test
    void a_sheet_of_a_club_that_is_not_in_the_tie_hides_nothing() {
        Days day = Days.oneTie().fact(sealed(ClubId.of("X")));
        assertThat(noticed(day, sealed(ClubId.of("X")))).containsExactly(true, true, true, true, true);
    }

    @Test
    void what_a_captain_tells_the_own_club_reaches_that_club() {
        assertThat(noticed(Days.oneTie(), new ExchangeFact.ClubTold(SHEETS, N)))
                .containsExactly(false, false, true, true, false);
    }

    @Test
    void a_tick_under_the_conditions_reaches_officials_and_the_own_club() {
        assertThat(noticed(Days.oneTie(), new SetUpFact.ConditionsRead(N, 1)))
                .containsExactly(false, true, true, true, false);
    }

    @Test
    void links_check_in_telling_and_heat_reach_officials() {
        List<Fact> facts = List.of(
                new SetUpFact.LinkIssued("L", Role.DESK, Optional.empty(), Optional.empty(), "d", "0".repeat(64)),
                new SetUpFact.LinkRevoked("L"),
                new SetUpFact.CheckedIn(PlayerId.of("N1"), true),
                new OfficialFact.NoticeTold(1, N, true),
                new OfficialFact.HeatDecided("air", 300, "caution", "drink", "R"));
        for (Fact fact : facts) {
            assertThat(noticed(Days.oneTie(), fact))
                    .as(fact.kind().code())
                    .containsExactly(false, true, false, false, false);
        }
    }

    @Test
    void nobody_falls_back_behind_what_was_seen_before() {
        Days day = Days.oneTie().fact(sealed(N), sealed(N)).courts("3");
        assertThat(day.event().reach().seq(Viewer.captain(N)))
                .isEqualTo(day.event().seq());
        assertThat(day.event().reach().seq(Viewer.of(Role.REFEREE)))
                .isEqualTo(day.event().seq());
        assertThat(day.event().reach().seq(Viewer.of(Role.VOLUNTEER)))
                .isEqualTo(day.event().seq());
    }

    @Test
    void what_happens_to_the_links_of_a_club_reaches_officials_and_that_club() {
        Days day = Days.oneTie();
        for (Fact fact : List.of(
                new SetUpFact.LinkIssued("L", Role.CAPTAIN, Optional.of(N), Optional.empty(), "c", "0".repeat(64)),
                new SetUpFact.LinkLetIn("L"),
                new SetUpFact.LinkRevoked("L"))) {
            assertThat(noticed(day, fact)).as(fact.kind().code()).containsExactly(false, true, true, true, false);
        }
    }
}
