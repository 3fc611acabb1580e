package tiewright.lineup.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tiewright.conditions.Plays;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.lineup.Belief;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.LineupProblem.Against;
import tiewright.lineup.tie.Proposal;
import tiewright.lineup.tie.Proposals;
import tiewright.rating.Earlier;

/** What advice may know of who plays what: all of the own club, of the other what stood on opened sheets. */
class WhoPlaysTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");

    /** The same squad, four and four, in A1 and A2; the other club's statements as written. */
    private static Days day(String theirs) {
        return Days.oneTie()
                .poolTie("A2", "A", 2, "S", "N")
                .with(Setting.RUBBER_KINDS, "women;men;mixed;open")
                .stating("N", "wwwwmmmm")
                .stating("S", theirs);
    }

    private static WhoPlays known(Days day) {
        return WhoPlays.to(N, day.event(), day.directory().stated());
    }

    private static LineupProblem problem(Days day, WhoPlays plays, Against against) {
        ClubKnows knows = ClubKnows.of(N, List.of(), Earlier.of(List.of())).stating(plays);
        return LineupInputs.of(day.event(), TieId.of("A2"), knows, against, 1).problem();
    }

    private static Map<PlayerId, Plays> of(Map<PlayerId, Plays> known, ClubId club) {
        Map<PlayerId, Plays> of = new java.util.TreeMap<>(known);
        of.keySet().removeIf(player -> !player.code().startsWith(club.code()));
        return of;
    }

    @ParameterizedTest
    @EnumSource(Against.class)
    void what_the_other_club_states_changes_nothing(Against against) {
        LineupProblem one = problem(day("wwwwmmmm"), known(day("wwwwmmmm")), against);
        LineupProblem other = problem(day("mmmm----"), known(day("mmmm----")), against);
        assertThat(one.belief()).isEqualTo(other.belief());
        assertThat(one.theirs()).isEqualTo(other.theirs());
        assertThat(one.ours()).isEqualTo(other.ours());
        assertThat(one.belief().anyOrder()).isFalse();
    }

    @Test
    void nothing_known_of_them_they_are_expected_down_their_list() {
        LineupProblem problem = problem(day("wwwwmmmm"), known(day("wwwwmmmm")), Against.STRAIGHT);
        assertThat(sheet(problem.belief())).isEqualTo(Days.straight("S", 4));
    }

    @ParameterizedTest
    @EnumSource(Against.class)
    void our_own_sheet_keeps_the_kinds_whatever_is_expected(Against against) {
        LineupProblem problem = problem(day("--------"), known(day("--------")), against);
        Proposal.Proposed proposed = (Proposal.Proposed) Proposals.propose(problem, Budget.usual(1));
        Map<PlayerId, Plays> ours = of(known(day("")).known(), N);
        Sheet first = proposed.sheets().get(0).sheet();
        assertThat(first.pairs().values().stream().flatMap(Optional::stream).toList())
                .hasSize(4)
                .satisfies(pairs -> {
                    assertThat(pairs.get(0).players()).allMatch(player -> ours.get(player) == Plays.WOMEN);
                    assertThat(pairs.get(1).players()).allMatch(player -> ours.get(player) == Plays.MEN);
                    assertThat(pairs.get(2).players())
                            .extracting(ours::get)
                            .containsExactlyInAnyOrder(Plays.WOMEN, Plays.MEN);
                });
    }

    /** By hand: rubber 1 shows S1 and S2, rubber 2 S5 and S6; S1 is not in the mixed one, and nothing is known of its two. */
    @Test
    void opened_sheets_show_who_stood_in_a_rubber_of_a_kind() {
        Days day = day("wwwwmmmm")
                .opened(ExchangeId.sheets(TieId.of("A1")), sheet("N", 12, 56, 37, 48), sheet("S", 12, 56, 37, 48));
        assertThat(of(known(day).known(), S))
                .isEqualTo(Map.of(
                        PlayerId.of("S1"), Plays.WOMEN,
                        PlayerId.of("S2"), Plays.WOMEN,
                        PlayerId.of("S5"), Plays.MEN,
                        PlayerId.of("S6"), Plays.MEN));
    }

    /** By hand: S1 is known by rubber 1 of A2, so S7, mixed with S1 in A1, is too, and S3, mixed with S7 in A3, then as well. */
    @Test
    void a_mixed_pair_shows_the_one_once_the_other_is_known() {
        Days day = day("wwwwmmmm")
                .poolTie("A3", "A", 3, "N", "S")
                .opened(ExchangeId.sheets(TieId.of("A3")), sheet("N", 12, 56, 37, 48), sheet("S", 24, 56, 73, 18))
                .opened(ExchangeId.sheets(TieId.of("A1")), sheet("N", 12, 56, 37, 48), sheet("S", 24, 56, 17, 38))
                .opened(ExchangeId.sheets(TieId.of("A2")), sheet("S", 12, 56, 48, 37), sheet("N", 12, 56, 37, 48));
        assertThat(of(known(day).known(), S))
                .containsEntry(PlayerId.of("S7"), Plays.MEN)
                .containsEntry(PlayerId.of("S3"), Plays.WOMEN)
                .containsEntry(PlayerId.of("S8"), Plays.MEN)
                .hasSize(8);
        assertThat(sheet(problem(day, known(day), Against.STRAIGHT).belief())
                        .pairs()
                        .values())
                .startsWith(Optional.of(Pair.of("S1", "S2")), Optional.of(Pair.of("S5", "S6")));
    }

    @Test
    void of_the_own_club_what_is_stated_counts_and_not_what_was_shown() {
        Days day = day("wwwwmmmm")
                .opened(ExchangeId.sheets(TieId.of("A1")), sheet("N", 12, 56, 37, 48), sheet("S", 12, 56, 37, 48))
                .stating("N", "-wwwmmmm");
        assertThat(known(day).known())
                .doesNotContainKey(PlayerId.of("N1"))
                .containsEntry(PlayerId.of("N2"), Plays.WOMEN);
    }

    private static Sheet sheet(Belief belief) {
        return belief.sheets().get(0).sheet();
    }

    private static Sheet sheet(String club, int... pairs) {
        return Sheet.of(java.util.Arrays.stream(pairs)
                .mapToObj(two -> Optional.of(Pair.of(club + two / 10, club + two % 10)))
                .toList());
    }
}
