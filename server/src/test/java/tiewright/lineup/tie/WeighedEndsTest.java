package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.RubberKinds;
import tiewright.conditions.RubberWeights;
import tiewright.conditions.TieRubbers;
import tiewright.event.PlayerId;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.SomeDraws;
import tiewright.lineup.TieRules;
import tiewright.lineup.Ties;
import tiewright.rating.Draws;
import tiewright.scoring.Format;

/** What a tie of weighed rubbers is worth, against adding up every outcome. */
class WeighedEndsTest {
    private static TieRules rules(DeciderKind decider, int... weights) {
        List<Integer> each = IntStream.of(weights).boxed().toList();
        return new TieRules(
                new TieRubbers(weights.length, new RubberWeights(each), RubberKinds.OPEN),
                1,
                OrderOfStrength.NONE,
                Format.sideOut(11),
                1,
                decider,
                Format.sideOut(11),
                0.5);
    }

    /** By hand: rubber 1 and one other win 6 + 4 or 6 + 3 of 13; the other two together 7. */
    @Test
    void two_of_three_rubbers_of_6_4_and_3_win_as_two_of_three_equal_ones_do() {
        EndWorths ends = EndWorths.of(Aim.WIN, rules(DeciderKind.ANY_TWO, 6, 4, 3));
        assertThat(ends.mean(new double[] {0.5, 0.5, 0.5}, 0.9)).isEqualTo(0.5);
        assertThat(ends.mean(new double[] {1, 0, 0}, 0.9)).isZero();
        assertThat(ends.mean(new double[] {0, 1, 1}, 0.9)).isEqualTo(1);
    }

    /** By hand: 3 against 1 + 1 + 1 is level; without rubber 4, which neither club has a pair for, 3 wins. */
    @Test
    void a_heavy_rubber_against_all_others_is_level_and_a_void_one_weighs_nothing() {
        EndWorths ends = EndWorths.of(Aim.WIN, rules(DeciderKind.ANY_TWO, 3, 1, 1, 1));
        assertThat(ends.mean(new double[] {1, 0, 0, 0}, 0.3)).isEqualTo(0.3);
        assertThat(ends.mean(new double[] {1, 0, 0, EndWorths.VOID}, 0.3)).isEqualTo(1);
        EndWorths drawn = EndWorths.of(Aim.WIN, rules(DeciderKind.NONE, 3, 1, 1, 1));
        assertThat(drawn.mean(new double[] {1, 0, 0, 0}, 0.3)).isEqualTo(0.5);
    }

    @Test
    void every_aim_is_the_sum_over_every_outcome() {
        for (int round = 0; round < 200; round++) {
            Random random = Seed.random(round);
            int[] weights = random.ints(1 + random.nextInt(6), 1, 5).toArray();
            Aim aim = List.of(
                            Aim.WIN,
                            Aim.RUBBERS,
                            Aim.qualify(Map.of(
                                    new Aim.Ended(2, 1, 4),
                                    random.nextDouble(),
                                    new Aim.Ended(1, 2, 1),
                                    random.nextDouble(),
                                    new Aim.Ended(1, 1, -2),
                                    random.nextDouble())))
                    .get(random.nextInt(3));
            TieRules rules = rules(random.nextBoolean() ? DeciderKind.NONE : DeciderKind.ANY_TWO, weights);
            double[] chances = Arrays.stream(weights)
                    .mapToDouble(any -> random.nextInt(8) == 0 ? EndWorths.VOID : random.nextDouble())
                    .toArray();
            double decider = random.nextDouble();
            EndWorths ends = EndWorths.of(aim, rules);
            double sum = byHand(aim, rules, chances, decider);
            assertThat(ends.mean(chances, decider)).as(Seed.rerun(round)).isCloseTo(sum, within(1e-12));
            double[] each = ends.each(drawn(chances), DrawnChance.surely(decider), SomeDraws.ALL);
            assertThat(each[random.nextInt(Draws.COUNT)]).as(Seed.rerun(round)).isCloseTo(sum, within(1e-12));
            assertThat(ends.within(drawn(chances), sum)).as(Seed.rerun(round)).isCloseTo(sum, within(1e-12));
        }
    }

    private static DrawnChance[] drawn(double[] chances) {
        return Arrays.stream(chances)
                .mapToObj(chance -> chance < 0 ? EndWorths.voided() : DrawnChance.surely(chance))
                .toArray(DrawnChance[]::new);
    }

    private static double byHand(Aim aim, TieRules rules, double[] chances, double decider) {
        double sum = 0;
        for (int outcome = 0; outcome < 1 << chances.length; outcome++) {
            double chance = 1;
            int ours = 0;
            int theirs = 0;
            int lead = 0;
            for (int rubber = 0; rubber < chances.length; rubber++) {
                boolean won = (outcome & 1 << rubber) != 0;
                int weight = rules.each().weights().of(rubber + 1);
                if (chances[rubber] < 0) {
                    chance *= won ? 0 : 1;
                } else {
                    chance *= won ? chances[rubber] : 1 - chances[rubber];
                    ours += won ? 1 : 0;
                    theirs += won ? 0 : 1;
                    lead += won ? weight : -weight;
                }
            }
            Aim.Ended end = new Aim.Ended(ours, theirs, lead);
            boolean decided = lead == 0 && rules.decider() != DeciderKind.NONE;
            sum += chance
                    * (decided
                            ? decider * aim.worth(end.and(1, 0), 0.5) + (1 - decider) * aim.worth(end.and(0, 1), 0.5)
                            : aim.worth(end, 0.5));
        }
        return sum;
    }

    /** Weights that are all the same are the tie that has always been. */
    @Test
    void equal_weights_of_two_are_worth_what_equal_rubbers_are() {
        for (int round = 0; round < 20; round++) {
            Random random = Seed.random(round);
            double[] chances = random.doubles(5).toArray();
            double decider = random.nextDouble();
            assertThat(EndWorths.of(Aim.WIN, rules(DeciderKind.ANY_TWO, 2, 2, 2, 2, 2))
                            .mean(chances, decider))
                    .as(Seed.rerun(round))
                    .isCloseTo(
                            EndWorths.of(Aim.WIN, rules(DeciderKind.ANY_TWO, 1, 1, 1, 1, 1))
                                    .mean(chances, decider),
                            within(1e-12));
        }
    }

    /** Four even pairs but for one strong one, against an unknown order: it belongs where most weight is. */
    @Test
    void the_strongest_pair_is_proposed_for_the_heaviest_rubber() {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(3),
                Ties.squad("a", 6),
                Ties.squad("b", 6),
                Ties.forms(9, 9, 0, 0, 0, 0),
                LineupProblem.Against.UNKNOWN,
                1);
        Board alike = new Board(problem);
        assertThat(alike.orderMatters()).isFalse();
        Board weighed = new Board(LineupProblem.of(
                Ties.weighing(problem, 1, 1, 3).rules(),
                problem.ours(),
                problem.theirs(),
                problem.strengths(),
                LineupProblem.Against.UNKNOWN,
                1));
        assertThat(weighed.orderMatters()).isTrue();
        Ranking.Ranked best = Ranking.of(weighed, true, 1).best().get(0);
        assertThat(weighed.pairs().get(best.line()[2]).players())
                .containsExactlyInAnyOrder(PlayerId.of("a1"), PlayerId.of("a2"));
    }
}
