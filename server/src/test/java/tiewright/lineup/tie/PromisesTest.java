package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.Reason;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.lineup.club.ClubKnows;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.club.PlayingDay.Standing;
import tiewright.rating.Earlier;

/** Promises to single players through a day, and what proposals say of them. */
class PromisesTest {
    private static final ClubId N = ClubId.of("N");
    private static final TiePlaces FULL = new TiePlaces(4, 1, Set.of());

    private static PlayerId a(int number) {
        return PlayerId.of("a" + number);
    }

    /** Four strong players and two weak, two rubbers; a6 is promised so many rubbers. */
    private static LineupProblem toTheWeakest(int rubbers, TiePlaces... others) {
        return Ties.problem(2, 6, Ties.forms(9, 8, 7, 6, 0, 0))
                .promising(new PlayingTime(0, Map.of(a(6), rubbers), Map.of(), List.of(others)));
    }

    private static Proposal.Proposed proposed(LineupProblem problem) {
        return (Proposal.Proposed) Proposals.propose(problem, Budget.usual(1), 3);
    }

    private static List<String> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code).toList();
    }

    @Test
    void what_later_ties_can_still_give_forces_nothing_and_is_said_to_wait() {
        Proposal.Proposed free = proposed(Ties.problem(2, 6, Ties.forms(9, 8, 7, 6, 0, 0)));
        Proposal.Proposed waits = proposed(toTheWeakest(1, FULL));
        assertThat(waits.sheets().get(0).sheet()).isEqualTo(free.sheets().get(0).sheet());
        assertThat(waits.sheets().get(0).chance())
                .isEqualTo(free.sheets().get(0).chance());
        assertThat(codes(waits.promises())).containsExactly("lineup.promises-wait");
        assertThat(waits.keeping()).isEmpty();
        assertThat(codes(free.promises())).isEmpty();
    }

    @Test
    void what_is_due_is_named_with_what_keeping_it_costs_and_the_sheet_that_does() {
        Proposal.Proposed due = proposed(toTheWeakest(2, FULL));
        assertThat(due.sheets().get(0).sheet().players()).doesNotContain(a(6));
        assertThat(codes(due.promises())).containsExactly("lineup.promise-due");
        assertThat(codes(due.sheets().get(0).reasons()))
                .contains("lineup.promise-unkept", "lineup.promise-costs", "lineup.promises-cost");
        ProposedSheet keeping = due.keeping().orElseThrow();
        assertThat(keeping.sheet().players()).contains(a(6));
        assertThat(codes(keeping.reasons())).doesNotContain("lineup.promise-unkept");
        // the same as wanting the player in the tie
        double wished = proposed(
                        Ties.problem(2, 6, Ties.forms(9, 8, 7, 6, 0, 0)).wishing(Wish.mustPlay(a(6))))
                .sheets()
                .get(0)
                .worth();
        assertThat(keeping.worth()).isCloseTo(wished, within(1e-9));
        assertThat(keeping.cost()).isCloseTo(due.sheets().get(0).worth() - wished, within(1e-9));
    }

    @Test
    void among_sheets_that_are_equal_the_one_that_keeps_the_promise_is_first() {
        LineupProblem even = Ties.problem(2, 6, Ties.even())
                .promising(new PlayingTime(0, Map.of(a(5), 1, a(6), 1), Map.of(), List.of()));
        assertThat(proposed(even).sheets().get(0).sheet().players()).contains(a(5), a(6));
        assertThat(codes(proposed(even).sheets().get(0).reasons()))
                .doesNotContain("lineup.promise-unkept", "lineup.promises-cost");
    }

    @Test
    void a_promise_against_a_wish_to_rest_is_named_with_it_and_with_nothing_else() {
        LineupProblem both = toTheWeakest(1).wishing(Wish.mustRest(a(5)), Wish.mustRest(a(6)));
        Proposal.Proposed proposed = proposed(both);
        assertThat(codes(proposed.promises()))
                .containsExactly("lineup.promise-due", "lineup.promises-conflict", "lineup.wish", "lineup.promise");
        assertThat(proposed.promises().get(2).data()).containsEntry("wish", Wish.mustRest(a(6)));
        assertThat(proposed.keeping()).isEmpty();
    }

    @Test
    void more_than_there_are_places_for_is_a_contradiction_of_the_fewest_that_are_too_many() {
        Map<PlayerId, Integer> all = Map.of(a(1), 1, a(2), 1, a(3), 1, a(4), 1, a(5), 1, a(6), 1);
        Proposal.Proposed proposed = proposed(
                Ties.problem(2, 6, Ties.even()).promising(new PlayingTime(0, all, Map.of(a(1), 1), List.of())));
        assertThat(codes(proposed.promises()).stream().filter("lineup.promise"::equals))
                .hasSize(5); // five want the four places, a1 has played
        assertThat(codes(proposed.promises())).doesNotContain("lineup.wish");
        assertThat(codes(proposed.sheets().get(0).reasons())).contains("lineup.promise-unkept");
    }

    @Test
    void what_cannot_be_kept_any_more_is_said_once_and_held_against_no_sheet() {
        Proposal.Proposed proposed = proposed(toTheWeakest(3, FULL));
        assertThat(codes(proposed.promises())).containsExactly("lineup.promise-gone", "lineup.promise-due");
        Proposal.Proposed absent = proposed(Ties.problem(2, 6, Ties.even())
                .promising(new PlayingTime(0, Map.of(PlayerId.of("away"), 1), Map.of(), List.of())));
        assertThat(codes(absent.promises())).containsExactly("lineup.promise-gone");
        assertThat(codes(absent.sheets().get(0).reasons())).doesNotContain("lineup.promise-unkept");
    }

    /** The judge: every sheet looked at once more with the least that is left unkept, and the most it is worth. */
    @Test
    void the_sheet_that_keeps_most_is_the_best_of_all_that_do() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        int kept = 0;
        for (int round = 0; round < 120; round++) {
            LineupProblem problem = LineupSolverTest.randomTie(random);
            Board board = new Board(problem);
            Ranking every = Ranking.of(board, board.orderMatters(), Integer.MAX_VALUE - 1);
            if (every.best().isEmpty()
                    || PromiseNotes.unkept(board, every.best().get(0).line()).isEmpty()) {
                continue;
            }
            kept++;
            Keeping keeping = PromiseNotes.keeping(board, every.best().get(0).line(), new tiewright.search.Stop())
                    .orElseThrow();
            int least = every.best().stream()
                    .mapToInt(one -> board.owed().missing(one.line()))
                    .min()
                    .orElseThrow();
            double most = every.best().stream()
                    .filter(one -> board.owed().missing(one.line()) == least)
                    .mapToDouble(one -> board.worth().of(one.line()))
                    .max()
                    .orElseThrow();
            assertThat(keeping.missing())
                    .as("%s, round %d: %s", seed, round, problem)
                    .isEqualTo(least);
            assertThat(board.worth().of(keeping.line()))
                    .as("%s, round %d: %s", seed, round, problem)
                    .isCloseTo(most, within(1e-12));
        }
        System.out.println(kept + " of 120 ties left a promise unkept");
    }

    private static Days day() {
        return Days.aDay()
                .clubs("N", "S", "W")
                .courts("1")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "N", "W")
                .timed("A1", "10:00", "1")
                .timed("A2", "12:00", "1");
    }

    private static PlayingDay.Line line(Event event, String player, PrivateNote... notes) {
        return PlayingDay.of(event, N, List.of(notes)).line(PlayerId.of(player)).orElseThrow();
    }

    private static RubbersPromised promise(String player, int rubbers) {
        return new RubbersPromised(PlayerId.of(player), rubbers);
    }

    @Test
    void a_promise_is_open_kept_or_gone_as_the_day_goes() {
        Event before = day().event();
        assertThat(line(before, "N1", promise("N1", 2)).standing()).isEqualTo(Standing.OPEN);
        assertThat(line(before, "N1", promise("N1", 3)).standing()).isEqualTo(Standing.GONE);
        assertThat(line(before, "N1").standing()).isEqualTo(Standing.NOTHING_PROMISED);
        assertThat(line(before, "N1", promise("N1", 2), promise("N1", 0)).standing())
                .isEqualTo(Standing.NOTHING_PROMISED);
        Event opened = day().opened("A1").event();
        PlayingDay.Line named = line(opened, "N1", promise("N1", 1));
        assertThat(named.named()).isEqualTo(1);
        assertThat(named.played()).isZero();
        assertThat(named.standing()).isEqualTo(Standing.KEPT);
        Event walkover =
                day().opened("A1").card("A1", "1", "", How.WALKOVER_AWAY).event();
        assertThat(line(walkover, "N1", promise("N1", 1)).had())
                .as("a walkover is no rubber played")
                .isZero();
        Event played = day().opened("A1").cards("A1", "11-3").event();
        assertThat(line(played, "N1", promise("N1", 2)).played()).isEqualTo(1);
        assertThat(line(played, "N1", promise("N1", 2)).left()).isEqualTo(1);
        Event both = day().opened("A1").opened("A2").event();
        assertThat(line(both, "N1", promise("N1", 3)).standing()).isEqualTo(Standing.GONE);
    }

    @Test
    void who_rests_or_is_away_gets_nothing_from_that_tie() {
        PrivateNote.TieWish rest = new PrivateNote.TieWish(TieId.of("A2"), N, List.of(), List.of(PlayerId.of("N8")));
        PlayingDay.Line line = line(day().event(), "N8", promise("N8", 2), rest);
        assertThat(line.standing()).isEqualTo(Standing.RESTS);
        assertThat(line.resting()).containsExactly(TieId.of("A2"));
        assertThat(line(day().event(), "N8", promise("N8", 1), rest).standing()).isEqualTo(Standing.OPEN);
        Event away =
                day().fact(new SetUpFact.CheckedIn(PlayerId.of("N8"), false)).event();
        assertThat(line(away, "N8", promise("N8", 1)).standing()).isEqualTo(Standing.GONE);
        LineupInputs first = LineupInputs.of(
                day().event(),
                TieId.of("A1"),
                ClubKnows.of(N, List.of(promise("N8", 1), rest), Earlier.of(List.of())),
                LineupProblem.Against.UNKNOWN,
                1);
        assertThat(new Board(first.problem()).owed().due()).containsExactly(Map.entry(PlayerId.of("N8"), 1));
        LineupInputs free = LineupInputs.of(
                day().event(),
                TieId.of("A1"),
                ClubKnows.of(N, List.of(promise("N8", 1)), Earlier.of(List.of())),
                LineupProblem.Against.UNKNOWN,
                1);
        assertThat(new Board(free.problem()).owed().due()).isEmpty();
    }

    @Test
    void a_promise_to_a_player_of_another_club_changes_nothing() {
        PlayingDay day = PlayingDay.of(day().event(), N, List.of(promise("S1", 2)));
        assertThat(day.isAnythingPromised()).isFalse();
        assertThat(day.line(PlayerId.of("S1"))).isEmpty();
    }

    @Test
    void ties_that_may_come_are_told_apart_from_those_that_do() {
        Days day = day().knockoutTie("F", 1, "A-1", "A-2");
        assertThat(PlayingDay.of(day.event(), N, List.of()).mayGoOn()).isTrue();
        assertThat(PlayingDay.of(day().event(), N, List.of()).mayGoOn()).isFalse();
        Days known = day().knockoutTie("F", 1, "N", "A-2");
        assertThat(line(known.event(), "N1", promise("N1", 3)).standing())
                .as("the other club is not known yet, the tie is sure")
                .isEqualTo(Standing.OPEN);
    }
}
