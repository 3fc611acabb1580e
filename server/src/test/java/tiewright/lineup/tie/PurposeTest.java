package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.TieRubbers;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Aim;
import tiewright.lineup.Budget;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Reason;
import tiewright.lineup.TieRules;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.rating.Estimate;
import tiewright.rating.Prior;
import tiewright.rating.Rating;
import tiewright.scoring.Format;

/** What a captain may want of a tie, and what rest, the decider and learning do to the best sheet. */
class PurposeTest {
    private static final Budget BUDGET = Budget.usual(3);

    private static Proposal.Proposed proposed(LineupProblem problem) {
        return (Proposal.Proposed) Proposals.propose(problem, BUDGET, 3);
    }

    private static ProposedSheet best(LineupProblem problem) {
        return proposed(problem).sheets().get(0);
    }

    private static List<String> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code).toList();
    }

    /** By hand: four rubbers and the decider even: as many rubbers won as lost. */
    @Test
    void even_sides_are_no_rubber_ahead() {
        ProposedSheet sheet = best(Ties.problem(4, 8, Ties.even()).aimingAt(Aim.RUBBERS));
        assertThat(sheet.worth()).isCloseTo(0, within(1e-12));
        assertThat(sheet.chance()).isCloseTo(0.5, within(1e-12));
        assertThat(sheet.level()).isCloseTo(0.375, within(1e-12));
    }

    /** Rubbers ahead add up rubber by rubber, whatever the order: twice the sum of the chances less their number, and the decider. */
    @Test
    void rubbers_ahead_are_the_sum_over_the_rubbers_and_the_decider() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 10; i++) {
            LineupProblem problem = Ties.problem(4, 8, Ties.random(random, 8)).aimingAt(Aim.RUBBERS);
            ProposedSheet sheet = best(problem);
            double rubbers = sheet.lines().stream()
                    .mapToDouble(line -> 2 * line.chance().orElseThrow() - 1)
                    .sum();
            double decider = DeciderAdvice.planned(problem, sheet.sheet(), java.util.Set.of())
                    .chance();
            assertThat(sheet.worth())
                    .as("%s, tie %d", seed, i)
                    .isCloseTo(rubbers + sheet.level() * (2 * decider - 1), within(1e-6));
        }
    }

    @Test
    void the_chance_to_go_through_is_the_mean_over_the_ends() {
        Map<Aim.Ended, Double> worths = Map.of(
                new Aim.Ended(4, 0),
                1.0,
                new Aim.Ended(3, 1),
                0.8,
                new Aim.Ended(3, 2),
                0.6,
                new Aim.Ended(2, 3),
                0.3,
                new Aim.Ended(1, 3),
                0.2,
                new Aim.Ended(0, 4),
                0.0);
        ProposedSheet sheet = best(Ties.problem(4, 8, Ties.even()).aimingAt(Aim.qualify(worths)));
        // 1/16, 4/16, 3/16 + 3/16, 4/16, 1/16
        assertThat(sheet.worth()).isCloseTo((1 + 4 * 0.8 + 3 * 0.6 + 3 * 0.3 + 4 * 0.2 + 0) / 16, within(1e-12));
        assertThat(sheet.chance()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void an_aim_can_ask_for_another_sheet_than_winning_does() {
        Seed seed = new Seed(11);
        Random random = seed.random();
        int other = 0;
        for (int i = 0; i < 20; i++) {
            LineupProblem problem = Ties.problem(4, 8, Ties.random(random, 8));
            ProposedSheet rubbers = best(problem.aimingAt(Aim.RUBBERS));
            ProposedSheet win = best(problem);
            assertThat(rubbers.chance()).isLessThanOrEqualTo(win.chance() + 1e-9);
            assertThat(rubbers.worth())
                    .isGreaterThanOrEqualTo(Proposals.evaluate(problem.aimingAt(Aim.RUBBERS), win.sheet(), BUDGET)
                                    .sheet()
                                    .worth()
                            - 1e-9);
            other += rubbers.sheet().equals(win.sheet()) ? 0 : 1;
        }
        assertThat(other).isPositive();
    }

    @Test
    void where_nothing_hangs_on_a_tie_the_captain_hears_it_and_learning_decides() {
        Map<PlayerId, Estimate> forms = new java.util.HashMap<>();
        IntStream.rangeClosed(1, 6).forEach(i -> forms.put(PlayerId.of("a" + i), Estimate.of(0, i > 4 ? 6 : 0.5)));
        Aim settled = Aim.qualify(Map.of(new Aim.Ended(2, 0), 1.0, new Aim.Ended(0, 2), 1.0));
        LineupProblem problem = LineupProblem.of(
                        Ties.rules(2),
                        Ties.squad("a", 6),
                        Ties.squad("b", 6),
                        Rating.fit(new Prior(forms, Map.of()), List.of()),
                        LineupProblem.Against.STRAIGHT,
                        1)
                .aimingAt(settled);
        assertThat(codes(proposed(problem).notes())).contains("lineup.nothing-hangs");
        // two rubbers of four players: the two of whom little is known play, and not together, for two looks teach more
        // than one
        ProposedSheet sheet = best(problem.learning());
        assertThat(sheet.sheet().players()).contains(PlayerId.of("a5"), PlayerId.of("a6"));
        assertThat(codes(sheet.reasons())).contains("lineup.learning");
        assertThat(codes(best(problem).reasons())).doesNotContain("lineup.learning");
    }

    /** By hand: variance 4, information 1/4: half of log2 of 2. */
    @Test
    void learning_is_half_the_log_of_how_much_the_doubt_shrinks() {
        assertThat(Learning.bits(4, 0.25)).isCloseTo(0.5, within(1e-12));
        assertThat(Learning.bits(0, 0.25)).isZero();
        LineupProblem even = Ties.problem(4, 8, Ties.even());
        assertThat(Learning.information(even, 0)).isGreaterThan(Learning.information(even, 20));
    }

    @Test
    void learning_never_costs_more_than_a_tenth_of_a_point() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 10; i++) {
            LineupProblem problem = Ties.problem(4, 8, Ties.random(random, 8));
            assertThat(best(problem.learning()).chance())
                    .as("%s, tie %d", seed, i)
                    .isGreaterThanOrEqualTo(best(problem).chance() - 0.001);
        }
    }

    @Test
    void who_comes_straight_off_court_is_rated_lower_and_named_as_tired() {
        Map<PlayerId, Freshness.Load> loads = Map.of(PlayerId.of("a1"), new Freshness.Load(2, OptionalInt.of(0)));
        LineupProblem rested = Ties.problem(3, 8, Ties.even());
        LineupProblem tired = rested.after(new Freshness(loads, Freshness.Cost.USUAL));
        assertThat(best(tired).sheet().players()).doesNotContain(PlayerId.of("a1"));
        ProposedSheet anyway = best(tired.wishing(Wish.mustPlay(PlayerId.of("a1"))));
        assertThat(codes(anyway.reasons())).contains("lineup.tired");
        assertThat(anyway.chance()).isLessThan(best(rested).chance());
        assertThat(best(rested.after(new Freshness(loads, Freshness.Cost.NONE))).chance())
                .isEqualTo(best(rested).chance());
    }

    @Test
    void tiredness_wears_off_with_rest_and_grows_with_rubbers() {
        Freshness.Cost cost = Freshness.Cost.USUAL;
        assertThat(cost.loss(new Freshness.Load(1, OptionalInt.of(0)))).isEqualTo(1.5);
        assertThat(cost.loss(new Freshness.Load(1, OptionalInt.of(15)))).isEqualTo(0.75);
        assertThat(cost.loss(new Freshness.Load(1, OptionalInt.of(30)))).isZero();
        assertThat(cost.loss(new Freshness.Load(5, OptionalInt.empty()))).isCloseTo(0.6, within(1e-12));
        assertThatThrownBy(() -> new Freshness.Load(-1, OptionalInt.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Freshness.Cost(-1, 30, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A long decider after short rubbers: two who are a little stronger are worth more in it, but only if they come to it fresh. */
    @Test
    void the_decider_pair_is_held_back_where_that_is_better() {
        TieRules rules = new TieRules(
                TieRubbers.alike(4),
                1,
                OrderOfStrength.NONE,
                Format.sideOut(5),
                1,
                DeciderKind.ANY_TWO,
                Format.sideOut(21),
                0);
        LineupProblem problem = LineupProblem.of(
                        rules,
                        Ties.squad("a", 10),
                        Ties.squad("b", 10),
                        Ties.forms(2, 2, 0, 0, 0, 0, 0, 0, 0, 0),
                        LineupProblem.Against.STRAIGHT,
                        1)
                .after(new Freshness(Map.of(), new Freshness.Cost(25, 30, 0, 0)));
        Proposal.Proposed proposal = proposed(problem);
        assertThat(proposal.sheets().get(0).sheet().players()).doesNotContain(PlayerId.of("a1"), PlayerId.of("a2"));
        assertThat(codes(proposal.notes())).contains("lineup.decider-held-back", "lineup.decider-likely");
        assertThat(proposal.decider().orElseThrow().best().orElseThrow().pair()).isEqualTo(Pair.of("a1", "a2"));
        // with nothing to lose they play
        assertThat(best(problem.after(new Freshness(Map.of(), Freshness.Cost.NONE)))
                        .sheet()
                        .players())
                .contains(PlayerId.of("a1"), PlayerId.of("a2"));
    }

    /** By hand, even players: with seven or six one rubber is given away, 5/16; with five or four two, 1/4 x 1/2. */
    @Test
    void what_if_we_say_six_seven_eight() {
        WhatIf what = WhatIf.of(Ties.problem(4, 8, Ties.even()).after(new Freshness(Map.of(), Freshness.Cost.NONE)))
                .orElseThrow();
        assertThat(what.sizes()).extracting(WhatIf.Size::players).containsExactly(4, 5, 6, 7, 8);
        assertThat(what.sizes())
                .extracting(size -> Math.round(size.worth() * 1e6) / 1e6)
                .containsExactly(0.125, 0.125, 0.3125, 0.3125, 0.5);
        assertThat(what.sizes()).allMatch(WhatIf.Size::everyChoiceTried);
        assertThat(what.absences())
                .hasSize(8)
                .allSatisfy(absence -> assertThat(absence.cost()).isCloseTo(0.1875, within(1e-9)));
    }

    @Test
    void the_dearest_absence_is_that_of_the_strongest() {
        WhatIf what = WhatIf.of(Ties.problem(3, 8, Ties.forms(9, 1, 1, 1, 1, 1, 1, 1)))
                .orElseThrow();
        assertThat(what.absences().get(0).player()).isEqualTo(PlayerId.of("a1"));
        assertThat(what.sizes().get(what.sizes().size() - 2).without())
                .hasSize(3)
                .doesNotContain(PlayerId.of("a1"));
        assertThat(WhatIf.of(Ties.problem(4, 8, Ties.even())
                        .wishing(Wish.mustPlay(PlayerId.of("a1")), Wish.mustRest(PlayerId.of("a1")))))
                .isEmpty();
    }

    @Test
    void refuses_worths_that_are_no_chances_and_an_aim_without_them() {
        assertThatThrownBy(() -> Aim.qualify(Map.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Aim.qualify(Map.of(new Aim.Ended(1, 0), 1.5)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Aim(Aim.Kind.WIN, Map.of(new Aim.Ended(1, 0), 1.0)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
