package tiewright.lineup.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;
import tiewright.lineup.Belief;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Wish;
import tiewright.lineup.tie.Proposals;
import tiewright.rating.Basis;
import tiewright.rating.Earlier;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

class LineupInputsTest {
    private static LineupInputs inputs(Event event, String club, PrivateNote... notes) {
        return LineupInputs.of(
                event,
                TieId.of("A1"),
                ClubKnows.of(ClubId.of(club), List.of(notes), Earlier.of(List.of())),
                LineupProblem.Against.STRAIGHT,
                1);
    }

    private static PrivateNote form(String player, double form) {
        return new PrivateNote.FormJudged(PlayerId.of(player), OptionalDouble.of(form), OptionalDouble.of(2));
    }

    private static PrivateNote chemistry(String one, String other, double extra, PairWish wish) {
        return new PrivateNote.ChemistryJudged(Pair.of(one, other), extra, OptionalDouble.of(1), Optional.of(wish));
    }

    @Test
    void a_captains_notes_become_strengths_and_wishes() {
        LineupProblem problem = inputs(
                        Days.oneTie().event(),
                        "N",
                        form("N1", 3),
                        form("N1", 5),
                        chemistry("N1", "N2", 2, PairWish.TOGETHER),
                        new PrivateNote.TieWish(
                                TieId.of("A1"), ClubId.of("N"), List.of(PlayerId.of("N4")), List.of(PlayerId.of("N3"))))
                .problem();
        assertThat(problem.strengths().form(PlayerId.of("N1")).mean()).isEqualTo(5);
        assertThat(problem.strengths().extra(Pair.of("N1", "N2")).mean()).isEqualTo(2);
        assertThat(problem.wishes())
                .containsExactly(
                        Wish.together(Pair.of("N1", "N2")),
                        Wish.mustPlay(PlayerId.of("N4")),
                        Wish.mustRest(PlayerId.of("N3")));
        assertThat(problem.ours().present()).hasSize(8);
        assertThat(problem.theirs().members())
                .extracting(member -> member.id().code())
                .startsWith("S1");
    }

    @Test
    void chemistry_and_wishes_of_the_other_club_change_nothing() {
        Event event = Days.oneTie().event();
        LineupInputs without = inputs(event, "N", form("N1", 5));
        LineupInputs with = inputs(
                event,
                "N",
                form("N1", 5),
                chemistry("S1", "S2", 9, PairWish.APART),
                new PrivateNote.TieWish(TieId.of("A1"), ClubId.of("S"), List.of(PlayerId.of("S1")), List.of()));
        assertThat(Proposals.propose(with.problem(), Budget.usual(1)))
                .isEqualTo(Proposals.propose(without.problem(), Budget.usual(1)));
        assertThat(with.decider()).isEqualTo(without.decider());
        assertThat(with.afterOpening()).isEmpty();
    }

    @Test
    void what_the_other_club_seals_changes_nothing() {
        Event before = Days.oneTie().event();
        Event after = Days.oneTie()
                .fact(new ExchangeFact.SheetSealed(
                        ExchangeId.sheets(TieId.of("A1")), ClubId.of("S"), "1".repeat(64), false))
                .event();
        assertThat(Proposals.propose(inputs(after, "N").problem(), Budget.usual(1)))
                .isEqualTo(Proposals.propose(inputs(before, "N").problem(), Budget.usual(1)));
    }

    @Test
    void who_is_absent_or_not_yet_here_is_not_present() {
        Event event = Days.oneTie()
                .fact(new SetUpFact.CheckedIn(PlayerId.of("N1"), false))
                .fact(new SetUpFact.PlayerEntered(
                        PlayerId.of("N2"),
                        ClubId.of("N"),
                        java.util.OptionalInt.of(2),
                        Optional.of(java.time.LocalTime.of(11, 0)),
                        Optional.empty(),
                        false))
                .event();
        assertThat(inputs(event, "N").problem().ours().present())
                .extracting(member -> member.id().code())
                .doesNotContain("N1", "N2")
                .hasSize(6);
    }

    @Test
    void opened_sheets_and_the_games_of_the_day_count() {
        Event event = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-2", "11-3")
                .card("A1", "3", "5-9", How.RETIRED_HOME)
                .event();
        LineupInputs inputs = inputs(event, "N");
        assertThat(inputs.basis()).isEqualTo(new Basis(2, 0, 0, 0));
        assertThat(inputs.theirSheet()).contains(Days.straight("S", 4));
        assertThat(inputs.afterOpening().orElseThrow().belief()).isEqualTo(Belief.surely(Days.straight("S", 4)));
        assertThat(inputs.problem().strengths().form(PlayerId.of("N1")).mean()).isGreaterThan(1);
        assertThat(inputs.hurt()).containsExactlyInAnyOrder(PlayerId.of("N5"), PlayerId.of("N6"));
        assertThat(inputs(event, "S").hurt()).isEmpty();
    }

    @Test
    void earlier_games_count_and_impossible_ones_do_not() {
        PrivateNote.PastGame won = new PrivateNote.PastGame(
                LocalDate.of(2026, 5, 2),
                "N1",
                "N2",
                "X1",
                "X2",
                Score.of(11, 0),
                Format.sideOut(11),
                Optional.empty());
        PrivateNote.PastGame onBothSides = new PrivateNote.PastGame(
                LocalDate.of(2026, 5, 2),
                "N1",
                "N2",
                "N1",
                "X2",
                Score.of(11, 0),
                Format.sideOut(11),
                Optional.empty());
        PrivateNote.PastGame unfinished = new PrivateNote.PastGame(
                LocalDate.of(2026, 5, 2), "N1", "N2", "X1", "X2", Score.of(4, 7), Format.sideOut(11), Optional.empty());
        LineupInputs inputs = LineupInputs.of(
                Days.oneTie().event(),
                TieId.of("A1"),
                ClubKnows.of(ClubId.of("N"), List.of(), Earlier.of(List.of(won, onBothSides, unfinished))),
                LineupProblem.Against.STRAIGHT,
                1);
        assertThat(inputs.basis()).isEqualTo(new Basis(0, 1, 0, 0));
        assertThat(inputs.problem().strengths().form(PlayerId.of("N1")).mean()).isGreaterThan(0);
    }

    @Test
    void older_games_count_less_where_the_captain_said_so() {
        Earlier lastYear = Earlier.of(List.of(new PrivateNote.PastGame(
                Days.DATE.minusDays(365),
                "N1",
                "N2",
                "X1",
                "X2",
                Score.of(11, 0),
                Format.sideOut(11),
                Optional.empty())));
        double whole = formOfN1(lastYear, List.of());
        assertThat(formOfN1(lastYear, List.of(new PrivateNote.HalfLifeChosen(ClubId.of("N"), OptionalInt.of(90)))))
                .isPositive()
                .isLessThan(whole / 3);
        assertThat(formOfN1(lastYear, List.of(new PrivateNote.HalfLifeChosen(ClubId.of("S"), OptionalInt.of(90)))))
                .isEqualTo(whole);
    }

    private static double formOfN1(Earlier earlier, List<PrivateNote> notes) {
        return LineupInputs.of(
                        Days.oneTie().event(),
                        TieId.of("A1"),
                        ClubKnows.of(ClubId.of("N"), notes, earlier),
                        LineupProblem.Against.STRAIGHT,
                        1)
                .problem()
                .strengths()
                .form(PlayerId.of("N1"))
                .mean();
    }

    @Test
    void a_club_that_does_not_play_the_tie_gets_no_advice() {
        Event event = Days.oneTie().event();
        assertThatThrownBy(() -> inputs(event, "X")).isInstanceOf(IllegalArgumentException.class);
    }
}
