package tiewright.lineup.decider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.Belief;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.Squad;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.rating.RallyModel;

/** What level rubbers are worth, beside an exhaustive look at whom both clubs could send then (a way of our own). */
class LevelWorthTest {
    private static final int ROUNDS = 100;
    private static final int PLAYERS = 5;
    private static final int RUBBERS = 3;

    private record Best(Optional<Pair> pair, double strength) {}

    private static LineupProblem problem(Random random, DeciderKind kind) {
        Map<PlayerId, Freshness.Load> loads = new HashMap<>();
        for (int i = 1; i <= PLAYERS; i++) {
            loads.put(PlayerId.of("a" + i), new Freshness.Load(random.nextInt(6), OptionalInt.of(random.nextInt(60))));
            loads.put(PlayerId.of("b" + i), new Freshness.Load(random.nextInt(6), OptionalInt.empty()));
        }
        List<Sheet> theirs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            theirs.add(sheet(random, "b"));
        }
        return LineupProblem.of(
                        Ties.rules(RUBBERS, 2, OrderOfStrength.NONE, kind),
                        Ties.squad("a", PLAYERS),
                        Ties.squad("b", PLAYERS),
                        Ties.random(random, PLAYERS),
                        LineupProblem.Against.STRAIGHT,
                        1)
                .after(new Freshness(loads, Freshness.Cost.USUAL))
                .expecting(Belief.anyOf(theirs));
    }

    private static Sheet sheet(Random random, String club) {
        List<Optional<Pair>> pairs = new ArrayList<>();
        List<Pair> all = DeciderPairs.all(Ties.squad(club, PLAYERS));
        for (int rubber = 0; rubber < RUBBERS; rubber++) {
            pairs.add(random.nextInt(6) == 0 ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size()))));
        }
        return Sheet.of(pairs);
    }

    private static double loss(LineupProblem problem, Sheet sheet, PlayerId player) {
        return problem.freshness().lossInDecider(player, sheet.players().contains(player));
    }

    /** Every pair that may, as strong as it would be then. */
    private static Best best(LineupProblem problem, Squad squad, Sheet sheet) {
        DeciderKind kind = problem.rules().decider();
        Best best = new Best(Optional.empty(), Double.NEGATIVE_INFINITY);
        for (Pair pair : DeciderPairs.allowed(kind, squad, Optional.of(sheet))) {
            double strength = Closers.strength(kind, problem.strengths(), pair)
                    - (loss(problem, sheet, pair.first()) + loss(problem, sheet, pair.second())) / 2;
            if (strength > best.strength()) {
                best = new Best(Optional.of(pair), strength);
            }
        }
        return best;
    }

    private static int[] line(List<Pair> pairs, Sheet sheet) {
        return sheet.pairs().values().stream()
                .mapToInt(pair -> pair.map(pairs::indexOf).orElse(-1))
                .toArray();
    }

    @Test
    void is_the_best_pair_that_may_against_theirs() {
        for (DeciderKind kind : List.of(DeciderKind.ANY_TWO, DeciderKind.ONE_FROM_EACH, DeciderKind.SINGLES_TURNS)) {
            for (int round = 0; round < ROUNDS; round++) {
                Random random = Seed.random(round);
                LineupProblem problem = problem(random, kind);
                List<Pair> pairs = DeciderPairs.all(problem.ours());
                LevelWorth worth = new LevelWorth(problem, new Meetings(problem), pairs);
                Sheet sheet = sheet(random, "a");
                Best own = best(problem, problem.ours(), sheet);
                double[] all = means(worth.of(line(pairs, sheet)));
                assertThat(all).hasSize(problem.belief().sheets().size());
                assertThat(worth.ourPair(line(pairs, sheet)).map(LevelWorth.Sent::pair))
                        .as(kind + ", " + Seed.rerun(round))
                        .isEqualTo(own.pair());
                for (int i = 0; i < all.length; i++) {
                    Best other = best(
                            problem,
                            problem.theirs(),
                            problem.belief().sheets().get(i).sheet());
                    assertThat(worth.theirPair(i).map(LevelWorth.Sent::pair)).isEqualTo(other.pair());
                    double expected = own.pair().isEmpty()
                            ? 0
                            : other.pair().isEmpty()
                                    ? 1
                                    : RallyModel.rubberChance(
                                            problem.rules().deciderScoring(), 1, own.strength() - other.strength());
                    assertThat(all[i]).as(kind + ", " + Seed.rerun(round)).isCloseTo(expected, within(1e-9));
                }
            }
        }
    }

    @Test
    void says_what_who_is_sent_has_lost_by_then() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            LineupProblem problem = problem(random, DeciderKind.ANY_TWO);
            List<Pair> pairs = DeciderPairs.all(problem.ours());
            Sheet sheet = sheet(random, "a");
            LevelWorth.Sent sent = new LevelWorth(problem, new Meetings(problem), pairs)
                    .ourPair(line(pairs, sheet))
                    .orElseThrow();
            double loss = (loss(problem, sheet, sent.pair().first())
                            + loss(problem, sheet, sent.pair().second()))
                    / 2;
            assertThat(sent.loss()).as(Seed.rerun(round)).isCloseTo(loss, within(1e-9));
        }
    }

    @Test
    void sends_no_pair_that_shall_not_play_together() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            LineupProblem problem = problem(random, DeciderKind.ANY_TWO);
            List<Pair> pairs = DeciderPairs.all(problem.ours());
            int[] line = line(pairs, sheet(random, "a"));
            Pair best = new LevelWorth(problem, new Meetings(problem), pairs)
                    .ourPair(line)
                    .orElseThrow()
                    .pair();
            assertThat(new LevelWorth(problem.wishing(Wish.apart(best)), new Meetings(problem), pairs)
                            .ourPair(line)
                            .orElseThrow()
                            .pair())
                    .as(Seed.rerun(round))
                    .isNotEqualTo(best);
        }
    }

    private static double[] means(DrawnChance[] chances) {
        return Arrays.stream(chances).mapToDouble(DrawnChance::mean).toArray();
    }

    @Test
    void is_nothing_without_a_decider() {
        LineupProblem problem = problem(Seed.random(0), DeciderKind.NONE);
        LevelWorth worth = new LevelWorth(problem, new Meetings(problem), DeciderPairs.all(problem.ours()));
        assertThat(means(worth.of(new int[] {0, 1, 2}))).containsOnly(0).hasSize(4);
        assertThat(worth.ourPair(new int[] {0, 1, 2})).isEmpty();
        assertThat(worth.theirPair(0)).isEmpty();
    }
}
