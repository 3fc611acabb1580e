package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Reason;
import tiewright.lineup.Squad;
import tiewright.lineup.TieRules;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.rating.Estimate;
import tiewright.rating.Prior;
import tiewright.rating.Rating;

class ProposalsTest {
    private static final Budget BUDGET = Budget.usual(7);

    private static Proposal.Proposed proposed(LineupProblem problem) {
        return proposed(problem, 3);
    }

    private static Proposal.Proposed proposed(LineupProblem problem, int count) {
        Proposal proposal = Proposals.propose(problem, BUDGET, count);
        assertThat(proposal.kind()).isEqualTo(Proposal.Kind.PROPOSED);
        return (Proposal.Proposed) proposal;
    }

    private static Proposal.Impossible impossible(LineupProblem problem) {
        Proposal proposal = Proposals.propose(problem, BUDGET);
        assertThat(proposal.kind()).isEqualTo(Proposal.Kind.IMPOSSIBLE);
        return (Proposal.Impossible) proposal;
    }

    private static List<String> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code).toList();
    }

    private static LineupProblem against(int ours, int theirs) {
        return LineupProblem.of(
                Ties.rules(4),
                Ties.squad("a", ours),
                Ties.squad("b", theirs),
                Ties.even(),
                LineupProblem.Against.STRAIGHT,
                1);
    }

    /** Worked by hand: with all rubbers and the decider even, full squads win half of their ties. */
    @Test
    void full_squads_of_even_players_win_half_of_the_ties() {
        ProposedSheet best = proposed(against(8, 8)).sheets().get(0);
        assertThat(best.chance()).isCloseTo(0.5, within(1e-12));
        assertThat(best.cost()).isZero();
        assertThat(best.lines())
                .allSatisfy(line -> assertThat(line.chance().orElseThrow()).isCloseTo(0.5, within(1e-12)));
    }

    /** Worked by hand: 1/8 + 3/8 x 1/2, three even rubbers, one given away, an even decider. */
    @Test
    void six_of_eight_leave_the_bottom_rubber_empty_and_win_five_ties_in_sixteen() {
        Proposal.Proposed proposal = proposed(against(6, 8));
        ProposedSheet best = proposal.sheets().get(0);
        assertThat(best.chance()).isCloseTo(0.3125, within(1e-12));
        assertThat(best.lines().get(3).pair()).isEmpty();
        assertThat(best.lines().get(3).chance()).contains(0.0);
        assertThat(best.sheet().players()).hasSize(6);
        Reason shortness = proposal.notes().stream()
                .filter(note -> note.code().equals("lineup.short-squad"))
                .findFirst()
                .orElseThrow();
        assertThat((Double) shortness.data().get("cost")).isCloseTo(0.1875, within(1e-12));
    }

    /** Worked by hand: rubber 4 is void, two of three even rubbers win the tie, no decider. */
    @Test
    void both_short_play_three_rubbers_without_a_decider() {
        Proposal.Proposed proposal = proposed(against(6, 6));
        assertThat(proposal.sheets().get(0).chance()).isCloseTo(0.5, within(1e-12));
        assertThat(proposal.sheets().get(0).lines().get(3).chance()).isEmpty();
        assertThat(proposal.decider()).isEmpty();
    }

    @Test
    void absent_players_are_not_named_and_their_absence_has_its_price() {
        Squad ours = new Squad(IntStream.rangeClosed(1, 8)
                .mapToObj(i -> new Squad.Member(PlayerId.of("a" + i), java.util.OptionalInt.of(i), i > 2))
                .toList());
        LineupProblem problem = LineupProblem.of(
                Ties.rules(4), ours, Ties.squad("b", 8), Ties.even(), LineupProblem.Against.STRAIGHT, 1);
        Proposal.Proposed proposal = proposed(problem);
        assertThat(proposal.sheets().get(0).sheet().players()).doesNotContain(PlayerId.of("a1"), PlayerId.of("a2"));
        Reason absence = proposal.notes().stream()
                .filter(note -> note.code().equals("lineup.absence-costs"))
                .findFirst()
                .orElseThrow();
        assertThat(absence.data()).containsEntry("players", List.of(PlayerId.of("a1"), PlayerId.of("a2")));
        assertThat((Double) absence.data().get("cost")).isCloseTo(0.1875, within(1e-12));
    }

    @Test
    void one_player_alone_can_be_named_nowhere() {
        assertThat(codes(impossible(against(1, 8)).reasons())).contains("lineup.nobody-to-name");
    }

    @Test
    void the_cost_of_the_next_best_is_what_it_gives_away() {
        LineupProblem problem = Ties.problem(4, 8, Ties.forms(12, 9, 7, 5, 2, 0, -3, -8));
        List<ProposedSheet> sheets = proposed(problem, 5).sheets();
        assertThat(sheets).hasSize(5);
        for (ProposedSheet sheet : sheets) {
            assertThat(sheet.chance() + sheet.cost()).isCloseTo(sheets.get(0).chance(), within(1e-9));
            assertThat(sheet.low()).isLessThanOrEqualTo(sheet.chance());
            assertThat(sheet.high()).isGreaterThanOrEqualTo(sheet.chance());
        }
        assertThat(sheets).extracting(ProposedSheet::cost).isSorted();
        assertThat(sheets.get(0).reasons())
                .anySatisfy(reason -> assertThat(reason.code()).startsWith("lineup.next-best"));
    }

    /** Two by two from the top, down to the last pair: then the chance falls with every pair moved away from that. */
    @Test
    void one_pair_that_is_better_together_is_put_together() {
        Map<Pair, Estimate> extra = Map.of(Pair.of("a3", "a7"), Estimate.of(8, 1));
        LineupProblem problem = LineupProblem.of(
                Ties.rules(4),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Rating.fit(new Prior(Map.of(), extra), List.of()),
                LineupProblem.Against.STRAIGHT,
                1);
        assertThat(proposed(problem).sheets().get(0).sheet().pairs().values())
                .contains(Optional.of(Pair.of("a3", "a7")));
    }

    @Test
    void wishes_are_granted_and_priced() {
        LineupProblem free = Ties.problem(3, 8, Ties.forms(12, 9, 7, 5, 2, 0, -3, -8));
        LineupProblem wishing = free.wishing(
                Wish.mustPlay(PlayerId.of("a8")), Wish.apart(Pair.of("a1", "a2")), Wish.mustRest(PlayerId.of("a3")));
        ProposedSheet best = proposed(wishing).sheets().get(0);
        assertThat(best.sheet().players()).contains(PlayerId.of("a8")).doesNotContain(PlayerId.of("a3"));
        assertThat(best.sheet().pairs().values()).doesNotContain(Optional.of(Pair.of("a1", "a2")));
        assertThat(best.chance()).isLessThan(proposed(free).sheets().get(0).chance());
        Reason price = best.reasons().stream()
                .filter(reason -> reason.data().containsValue(Wish.mustPlay(PlayerId.of("a8"))))
                .findFirst()
                .orElseThrow();
        double without = proposed(free.wishing(Wish.apart(Pair.of("a1", "a2")), Wish.mustRest(PlayerId.of("a3"))))
                .sheets()
                .get(0)
                .chance();
        assertThat(price.code()).isEqualTo("lineup.wish-costs");
        assertThat((Double) price.data().get("cost")).isCloseTo(without - best.chance(), within(1e-9));
    }

    /** Worked by hand: four equal players win both rubbers in a quarter of the ties, and half of the deciders after the half that is level. */
    @Test
    void a_wish_to_play_together_bars_no_pair_from_the_decider() {
        LineupProblem problem = LineupProblem.of(
                        Ties.rules(2, 1, OrderOfStrength.NONE, DeciderKind.ONE_FROM_EACH),
                        Ties.squad("a", 4),
                        Ties.squad("b", 4),
                        Ties.even(),
                        LineupProblem.Against.STRAIGHT,
                        1)
                .wishing(Wish.together(Pair.of("a1", "a2")));
        ProposedSheet best = proposed(problem, 1).sheets().get(0);
        assertThat(best.sheet().pairs().values()).contains(Optional.of(Pair.of("a1", "a2")));
        assertThat(best.chance()).isCloseTo(0.5, within(1e-12));
        DeciderAdvice advice = DeciderAdvice.planned(problem, best.sheet(), Set.of());
        assertThat(advice.candidates()).hasSize(4);
        assertThat(advice.chance()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_wish_to_play_apart_bars_the_pair_from_the_decider_but_not_from_singles_in_turns() {
        for (DeciderKind kind : List.of(DeciderKind.ANY_TWO, DeciderKind.SINGLES_TURNS)) {
            LineupProblem problem = LineupProblem.of(
                            Ties.rules(2, 1, OrderOfStrength.NONE, kind),
                            Ties.squad("a", 4),
                            Ties.squad("b", 4),
                            Ties.forms(9, 9, 0, 0),
                            LineupProblem.Against.STRAIGHT,
                            1)
                    .wishing(Wish.apart(Pair.of("a1", "a2")));
            DeciderAdvice advice = DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of());
            assertThat(advice.candidates().stream()
                            .anyMatch(candidate -> candidate.pair().equals(Pair.of("a1", "a2"))))
                    .as(kind.code())
                    .isEqualTo(kind == DeciderKind.SINGLES_TURNS);
        }
    }

    @Test
    void a_contradiction_is_named_by_its_smallest_part() {
        Pair pair = Pair.of("a1", "a2");
        LineupProblem problem = against(8, 8)
                .wishing(
                        Wish.mustPlay(PlayerId.of("a5")),
                        Wish.together(pair),
                        Wish.mustPlay(PlayerId.of("a1")),
                        Wish.apart(pair),
                        Wish.apart(Pair.of("a3", "a4")));
        // four pairs of eight players: everybody plays, so the two wishes about the pair are enough
        assertThat(impossible(problem).conflict()).containsExactlyInAnyOrder(Wish.together(pair), Wish.apart(pair));
    }

    @Test
    void with_spare_players_the_contradiction_needs_three_wishes() {
        Pair pair = Pair.of("a1", "a2");
        LineupProblem problem = LineupProblem.of(
                        Ties.rules(3),
                        Ties.squad("a", 8),
                        Ties.squad("b", 8),
                        Ties.even(),
                        LineupProblem.Against.STRAIGHT,
                        1)
                .wishing(
                        Wish.mustRest(PlayerId.of("a2")),
                        Wish.together(pair),
                        Wish.mustPlay(PlayerId.of("a7")),
                        Wish.mustPlay(PlayerId.of("a1")));
        assertThat(impossible(problem).conflict())
                .containsExactlyInAnyOrder(
                        Wish.mustRest(PlayerId.of("a2")), Wish.together(pair), Wish.mustPlay(PlayerId.of("a1")));
    }

    /** Fixed pairs in interchangeable rubbers: every order of one club against all orders of the other is worth the same mean. */
    @Test
    void against_an_unknown_order_the_order_is_drawn_by_lot() {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(4),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Ties.forms(12, 9, 7, 5, 2, 0, -3, -8),
                LineupProblem.Against.UNKNOWN,
                1);
        Proposal.Proposed proposal = proposed(problem);
        assertThat(proposal.orderMatters()).isFalse();
        assertThat(codes(proposal.notes())).contains("lineup.order-free");
        Sheet drawn = proposal.sheets().get(0).sheet();
        List<Pair> pairs =
                drawn.pairs().values().stream().flatMap(Optional::stream).toList();
        Sheet reversed = Sheet.full(pairs.get(3), pairs.get(2), pairs.get(1), pairs.get(0));
        assertThat(Proposals.evaluate(problem, reversed, BUDGET).sheet().chance())
                .isCloseTo(proposal.sheets().get(0).chance(), within(1e-12));
    }

    @Test
    void a_sheet_of_the_captains_own_is_taken_whatever_the_wishes() {
        LineupProblem problem = against(8, 8).wishing(Wish.apart(Pair.of("a1", "a2")));
        Sheet own = Sheet.full(Pair.of("a1", "a2"), Pair.of("a3", "a4"), Pair.of("a5", "a6"), Pair.of("a7", "a8"));
        Evaluation taken = Proposals.evaluate(problem, own, BUDGET);
        assertThat(taken.wishesNotGranted()).containsExactly(Wish.apart(Pair.of("a1", "a2")));
        assertThat(taken.sheet().chance()).isCloseTo(0.5, within(1e-12));
        Sheet stranger = Sheet.full(Pair.of("a1", "a2"), Pair.of("a3", "x1"), Pair.of("a5", "a6"), Pair.of("a7", "a8"));
        assertThatThrownBy(() -> Proposals.evaluate(problem, stranger, BUDGET))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_sheet_by_itself_has_the_chances_that_it_has_beside_the_best() {
        LineupProblem problem = against(8, 8);
        Sheet own = Sheet.full(Pair.of("a1", "a2"), Pair.of("a3", "a4"), Pair.of("a5", "a6"), Pair.of("a7", "a8"));
        ProposedSheet beside = Proposals.evaluate(problem, own, BUDGET).sheet();
        ProposedSheet alone = Evaluation.alone(problem, own);
        assertThat(alone.chance()).isEqualTo(beside.chance());
        assertThat(alone.low()).isEqualTo(beside.low()).isLessThan(alone.chance());
        assertThat(alone.high()).isEqualTo(beside.high()).isGreaterThan(alone.chance());
        assertThat(alone.cost()).isZero();
    }

    @Test
    void an_order_of_strength_is_kept() {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(4, OrderOfStrength.RANK_SUM),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Ties.forms(-8, 0, 3, 9, 2, 1, 12, 4),
                LineupProblem.Against.STRAIGHT,
                1);
        for (ProposedSheet sheet : proposed(problem, 10).sheets()) {
            List<Integer> sums = IntStream.rangeClosed(1, 4)
                    .mapToObj(rubber -> sheet.sheet().pair(RubberNo.of(rubber)).orElseThrow())
                    .map(pair -> Integer.parseInt(pair.first().code().substring(1))
                            + Integer.parseInt(pair.second().code().substring(1)))
                    .toList();
            assertThat(sums).isSorted();
        }
    }

    @Test
    void without_a_decider_a_drawn_tie_counts_its_share_of_a_win() {
        TieRules drawn = Ties.rules(4, 1, OrderOfStrength.NONE, DeciderKind.NONE);
        LineupProblem problem = LineupProblem.of(
                drawn, Ties.squad("a", 6), Ties.squad("b", 8), Ties.even(), LineupProblem.Against.STRAIGHT, 1);
        assertThat(proposed(problem).sheets().get(0).chance()).isCloseTo(1.0 / 8 + 3.0 / 8 * 0.5, within(1e-12));
        assertThat(proposed(problem).decider()).isEmpty();
    }

    @Test
    void the_same_seed_gives_the_same_proposal() {
        LineupProblem problem = Ties.problem(4, 8, Ties.random(new java.util.Random(3), 8));
        assertThat(proposed(problem)).isEqualTo(proposed(problem));
    }

    /** Nothing is known of anybody: the lot alone says who is proposed, in rubbers as in the decider, and the same lot the same again. */
    @ParameterizedTest
    @CsvSource({"2, 2, NONE", "4, 1, RANK_SUM", "3, 1, STRONGEST_FIRST"})
    void of_equal_sheets_the_lot_chooses(int rubbers, int most, OrderOfStrength order) {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(rubbers, most, order),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Rating.fit(Prior.none(), List.of()),
                LineupProblem.Against.UNKNOWN,
                1);
        Set<Sheet> sheets = new HashSet<>();
        Set<Pair> deciders = new HashSet<>();
        for (int lot = 0; lot < 8; lot++) {
            Proposal.Proposed drawn = proposed(problem.listedBy(lot));
            assertThat(proposed(problem.listedBy(lot)).sheets()).isEqualTo(drawn.sheets());
            assertThat(drawn.sheets().get(0).chance())
                    .isCloseTo(proposed(problem).sheets().get(0).chance(), within(0.002));
            sheets.add(drawn.sheets().get(0).sheet());
            drawn.decider().flatMap(DeciderAdvice::best).ifPresent(best -> deciders.add(best.pair()));
        }
        assertThat(sheets).hasSizeGreaterThan(4);
        assertThat(deciders.size() > 2 || rubbers == 3).isTrue();
    }

    @Test
    void the_lot_changes_nothing_where_one_sheet_is_better() {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(2, 2, OrderOfStrength.NONE),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Ties.forms(2, 0, 0, 9, 0, 0, 8, 0),
                LineupProblem.Against.STRAIGHT,
                1);
        for (int lot = 0; lot < 5; lot++) {
            assertThat(proposed(problem.listedBy(lot)).sheets().get(0).sheet())
                    .isEqualTo(proposed(problem).sheets().get(0).sheet());
        }
    }

    @Test
    void hurt_players_are_asked_and_not_barred() {
        DeciderAdvice advice =
                DeciderAdvice.of(against(8, 8), Optional.empty(), Optional.empty(), Set.of(PlayerId.of("a1")));
        assertThat(advice.candidates()).hasSize(28);
        assertThat(advice.candidates())
                .filteredOn(DeciderAdvice.Candidate::hurt)
                .hasSize(7);
        assertThat(codes(advice.notes())).contains("lineup.decider-hurt");
    }

    @Test
    void a_mark_as_hurt_adds_to_the_doubt_about_its_own_pairs_and_no_others() {
        LineupProblem problem = against(8, 8);
        DeciderAdvice plain = DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of());
        DeciderAdvice marked = DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of(PlayerId.of("a1")));
        for (DeciderAdvice.Candidate one : marked.candidates()) {
            DeciderAdvice.Candidate before = plain.candidates().stream()
                    .filter(other -> other.pair().equals(one.pair()))
                    .findFirst()
                    .orElseThrow();
            if (one.pair().has(PlayerId.of("a1"))) {
                assertThat(one.high() - one.low()).isGreaterThan(before.high() - before.low() + 0.01);
            } else {
                assertThat(one.high() - one.low()).isCloseTo(before.high() - before.low(), within(1e-9));
            }
        }
    }

    @Test
    void even_pairs_are_either() {
        DeciderAdvice advice = DeciderAdvice.of(against(8, 8), Optional.empty(), Optional.empty(), Set.of());
        assertThat(advice.chance()).isCloseTo(0.5, within(1e-9));
        assertThat(advice.withinNoise()).hasSize(28);
        assertThat(advice.candidates().stream()
                        .mapToDouble(DeciderAdvice.Candidate::weight)
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(codes(advice.notes())).containsExactly("lineup.decider-either", "lineup.decider-sure");
        assertThat(advice.sure().orElseThrow().guarantee()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_pair_that_is_clearly_the_best_goes_alone() {
        LineupProblem problem = Ties.problem(4, 8, Ties.forms(30, 30, 0, 0, 0, 0, 0, 0));
        DeciderAdvice.Candidate first = DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of())
                .best()
                .orElseThrow();
        assertThat(first.pair()).isEqualTo(Pair.of("a1", "a2"));
        assertThat(first.verdict()).isEqualTo(DeciderAdvice.Verdict.BEST);
        assertThat(first.weight()).isCloseTo(1, within(1e-9));
        assertThat(first.low()).isLessThan(first.chance());
        assertThat(first.high()).isGreaterThan(first.chance());
    }

    @Test
    void one_from_each_names_two_who_did_not_play_together() {
        TieRules rules = Ties.rules(2, 1, OrderOfStrength.NONE, DeciderKind.ONE_FROM_EACH);
        LineupProblem problem = LineupProblem.of(
                rules, Ties.squad("a", 6), Ties.squad("b", 6), Ties.even(), LineupProblem.Against.STRAIGHT, 1);
        Sheet sheet = Sheet.full(Pair.of("a1", "a2"), Pair.of("a3", "a4"));
        assertThat(DeciderAdvice.of(problem, Optional.of(sheet), Optional.empty(), Set.of())
                        .candidates())
                .extracting(DeciderAdvice.Candidate::pair)
                .containsExactlyInAnyOrder(
                        Pair.of("a1", "a3"), Pair.of("a1", "a4"), Pair.of("a2", "a3"), Pair.of("a2", "a4"));
    }

    @Test
    void nobody_is_named_where_there_is_no_decider() {
        TieRules rules = Ties.rules(4, 1, OrderOfStrength.NONE, DeciderKind.NONE);
        LineupProblem problem = LineupProblem.of(
                rules, Ties.squad("a", 8), Ties.squad("b", 8), Ties.even(), LineupProblem.Against.STRAIGHT, 1);
        DeciderAdvice advice = DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of());
        assertThat(advice.best()).isEmpty();
        assertThat(codes(advice.notes())).containsExactly("lineup.decider-nobody-named");
    }
}
