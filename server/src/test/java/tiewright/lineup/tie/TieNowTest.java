package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.lineup.tie.TieNow.Meeting;
import tiewright.lineup.tie.TieNow.SoFar;
import tiewright.rating.Estimate;
import tiewright.rating.RallyModel;

/** An opened tie is worth what counting every way in which it can end says. No source: elementary probability. */
class TieNowTest {
    private static final List<Meeting> FOUR = List.of(
            new Meeting(Pair.of("a1", "a2"), Pair.of("b1", "b2")),
            new Meeting(Pair.of("a3", "a4"), Pair.of("b3", "b4")),
            new Meeting(Pair.of("a5", "a6"), Pair.of("b5", "b6")),
            new Meeting(Pair.of("a7", "a8"), Pair.of("b7", "b8")));

    private static LineupProblem problem(Random random) {
        return LineupProblem.of(
                Ties.rules(4),
                Ties.squad("a", 8),
                Ties.squad("b", 8),
                Ties.random(random, 8),
                LineupProblem.Against.STRAIGHT,
                1);
    }

    private static TieNow.Odds sure(double chance) {
        return new TieNow.Odds(chance, chance, chance);
    }

    private static double chance(LineupProblem problem, Meeting meeting) {
        return RallyModel.rubberChance(
                problem.rules().scoring(), problem.rules().bestOf(), problem.edge(meeting.ours(), meeting.theirs()));
    }

    /** So many won, then so many lost, then those that are left, in the order of the rubbers. */
    private static SoFar soFar(int won, int lost, List<Meeting> left, Optional<Meeting> decider) {
        TreeMap<RubberNo, Boolean> over = new TreeMap<>();
        TreeMap<RubberNo, Meeting> open = new TreeMap<>();
        RubberNo.upTo(won).forEach(rubber -> over.put(rubber, true));
        RubberNo.upTo(won + lost).forEach(rubber -> over.putIfAbsent(rubber, false));
        left.forEach(meeting -> open.put(RubberNo.of(won + lost + open.size() + 1), meeting));
        return new SoFar(over, open, decider);
    }

    /** Every way in which the rubbers that are left can end, one by one. */
    private static double byHand(LineupProblem problem, int won, List<Meeting> left, double decider) {
        double sum = 0;
        for (int way = 0; way < 1 << left.size(); way++) {
            double likely = 1;
            int ours = won;
            for (int i = 0; i < left.size(); i++) {
                boolean wins = (way >> i & 1) == 1;
                likely *= wins ? chance(problem, left.get(i)) : 1 - chance(problem, left.get(i));
                ours += wins ? 1 : 0;
            }
            sum += likely * (ours > 2 ? 1 : ours == 2 ? decider : 0);
        }
        return sum;
    }

    @Test
    void it_is_the_sum_over_every_way_in_which_the_rest_can_end() {
        for (int round = 0; round < 40; round++) {
            Random random = Seed.random(round);
            LineupProblem problem = problem(random);
            int over = random.nextInt(5);
            int won = random.nextInt(over + 1);
            List<Meeting> left = FOUR.subList(over, 4);
            double decider = random.nextDouble();
            TieNow now = TieNow.of(problem, soFar(won, over - won, left, Optional.empty()), sure(decider), round);
            assertThat(now.tie().chance())
                    .as(Seed.rerun(round))
                    .isCloseTo(byHand(problem, won, left, decider), within(1e-12));
            assertThat(now.tie().low()).isLessThanOrEqualTo(now.tie().chance());
            assertThat(now.tie().high()).isGreaterThanOrEqualTo(now.tie().chance());
            assertThat(now.left()).hasSize(left.size());
        }
    }

    @Test
    void a_tie_that_is_decided_is_sure_and_one_with_known_deciders_is_worth_their_chance() {
        LineupProblem problem = problem(Seed.random(0));
        assertThat(TieNow.of(problem, soFar(3, 0, FOUR.subList(3, 4), Optional.empty()), sure(0.5), 1)
                        .tie())
                .isEqualTo(new TieNow.Odds(1, 1, 1));
        assertThat(TieNow.of(problem, soFar(1, 3, List.of(), Optional.empty()), sure(0.5), 1)
                        .tie())
                .isEqualTo(new TieNow.Odds(0, 0, 0));
        TieNow level = TieNow.of(problem, soFar(2, 2, List.of(), Optional.of(FOUR.get(0))), sure(0.999), 1);
        double edge = problem.edge(FOUR.get(0).ours(), FOUR.get(0).theirs());
        assertThat(level.tie().chance())
                .isCloseTo(RallyModel.rubberChance(problem.rules().deciderScoring(), 1, edge), within(1e-12));
        assertThat(level.tie().low()).isLessThan(level.tie().chance());
    }

    /** A level tie is worth its decider: whoever plays it, with all its doubt. */
    @Test
    void a_decider_of_unknown_pairs_brings_its_own_doubt() {
        TieNow level = TieNow.of(
                problem(Seed.random(0)), soFar(2, 2, List.of(), Optional.empty()), new TieNow.Odds(0.5, 0.1, 0.9), 1);
        assertThat(level.tie().chance()).isCloseTo(0.5, within(1e-12));
        assertThat(level.tie().low()).isBetween(0.05, 0.17);
        assertThat(level.tie().high()).isBetween(0.83, 0.95);
    }

    /** 400 draws place an end of a 95 % interval to about 0.13 standard deviations; three of those are allowed. */
    @Test
    void the_range_of_a_rubber_is_that_of_the_doubt_about_its_two_pairs() {
        LineupProblem problem = problem(Seed.random(1));
        TieNow now = TieNow.of(problem, soFar(0, 0, FOUR, Optional.empty()), sure(0.5), 1);
        for (int i = 0; i < FOUR.size(); i++) {
            Estimate edge =
                    problem.strengths().edge(FOUR.get(i).ours(), FOUR.get(i).theirs());
            List<Double> ends = new ArrayList<>();
            for (double z : new double[] {-2.4, -1.5, 1.5, 2.4}) {
                ends.add(RallyModel.rubberChance(
                        problem.rules().scoring(), problem.rules().bestOf(), edge.mean() + z * edge.sd()));
            }
            assertThat(now.left().get(i).low()).isBetween(ends.get(0), ends.get(1));
            assertThat(now.left().get(i).high()).isBetween(ends.get(2), ends.get(3));
        }
    }
}
