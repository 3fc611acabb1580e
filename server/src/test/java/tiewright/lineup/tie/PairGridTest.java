package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.Pair;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.rating.RallyModel;

/** The grid of pairs says what the sheet says, taken apart. No source: our own table. */
class PairGridTest {
    private static ProposedSheet best(LineupProblem problem) {
        return ((Proposal.Proposed) Proposals.propose(problem, Budget.usual(7), 1))
                .sheets()
                .get(0);
    }

    /** Where every order of theirs is as likely, the chance of a rubber is the mean over their pairs. */
    @Test
    void a_row_has_the_mean_that_stands_in_its_rubber() {
        for (int round = 0; round < 30; round++) {
            Random random = Seed.random(round);
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(4),
                    Ties.squad("a", 8),
                    Ties.squad("b", 8),
                    Ties.random(random, 8),
                    LineupProblem.Against.UNKNOWN,
                    1);
            ProposedSheet best = best(problem);
            PairGrid grid = PairGrid.of(problem, best.sheet());
            assertThat(grid.theirs()).hasSize(4);
            for (int row = 0; row < 4; row++) {
                assertThat(grid.ours().get(row))
                        .isEqualTo(best.lines().get(row).pair().orElseThrow());
                assertThat(grid.chances().get(row).stream()
                                .mapToDouble(chance -> chance)
                                .average()
                                .orElseThrow())
                        .as(Seed.rerun(round))
                        .isCloseTo(best.lines().get(row).chance().orElseThrow(), within(1e-9));
            }
        }
    }

    /**
     * Against one sheet that is sure, a rubber of the proposal is as much in doubt as its two pairs are. The range is drawn, so its ends lie
     * about two deviations away; the bounds are so wide that no seed falls out of them.
     */
    @Test
    void each_rubber_of_a_proposal_has_a_range_that_holds_its_chance() {
        for (int round = 0; round < 20; round++) {
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(4),
                    Ties.squad("a", 8),
                    Ties.squad("b", 8),
                    Ties.random(Seed.random(round), 8),
                    LineupProblem.Against.STRAIGHT,
                    1);
            for (ProposedSheet.Line line : best(problem).lines()) {
                Pair theirs = problem.belief()
                        .sheets()
                        .get(0)
                        .sheet()
                        .pair(line.rubber())
                        .orElseThrow();
                var edge = problem.strengths().edge(line.pair().orElseThrow(), theirs);
                ProposedSheet.Range range = line.range().orElseThrow();
                assertThat(range.low())
                        .as(Seed.rerun(round))
                        .isBetween(at(problem, edge.mean() - 3.2 * edge.sd()), at(problem, edge.mean() - edge.sd()));
                assertThat(range.high())
                        .as(Seed.rerun(round))
                        .isBetween(at(problem, edge.mean() + edge.sd()), at(problem, edge.mean() + 3.2 * edge.sd()));
            }
        }
    }

    private static double at(LineupProblem problem, double edge) {
        return RallyModel.rubberChance(
                problem.rules().scoring(), problem.rules().bestOf(), edge);
    }

    @Test
    void the_pairs_of_a_club_that_goes_straight_stand_down_its_list_and_a_short_sheet_has_fewer_rows() {
        LineupProblem problem = Ties.problem(4, 8, Ties.forms(9, 9, 0, 0, 0, 0, -9, -9));
        PairGrid grid = PairGrid.of(problem, best(problem).sheet());
        assertThat(grid.theirs())
                .containsExactly(Pair.of("b1", "b2"), Pair.of("b3", "b4"), Pair.of("b5", "b6"), Pair.of("b7", "b8"));
        LineupProblem six = problem.withOnly(player -> !List.of("a7", "a8").contains(player.code()));
        assertThat(PairGrid.of(six, best(six).sheet()).chances()).hasSize(3);
    }
}
