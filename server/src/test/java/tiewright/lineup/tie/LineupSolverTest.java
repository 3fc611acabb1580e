package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.RubberKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Aim;
import tiewright.lineup.Budget;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.Squad;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.TieRules;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;

/** The search against trying every sheet. */
class LineupSolverTest {
    /** 30 ties in every build, a thousand with {@code -Dmany=true}. */
    private static final int TIES = Boolean.getBoolean("many") ? 1_000 : Integer.getInteger("ties", 30);

    @Test
    void finds_the_best_sheet_of_random_ties() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        long slowest = 0;
        long start = System.nanoTime();
        for (int i = 0; i < TIES; i++) {
            LineupProblem problem = randomTie(random);
            Board board = new Board(problem);
            Ranking ranking = Ranking.of(board, true, 1);
            assertThat(ranking.complete()).isTrue();
            long before = System.nanoTime();
            var found = LineupSolver.best(board, Budget.usual(seed.value() + i));
            slowest = Math.max(slowest, System.nanoTime() - before);
            if (ranking.best().isEmpty()) {
                assertThat(found).as("%s, tie %d", seed, i).isEmpty();
            } else {
                assertThat(found).as("%s, tie %d: %s", seed, i, problem).isPresent();
                assertThat(Merit.of(board, found.orElseThrow()))
                        .as("%s, tie %d: %s", seed, i, problem)
                        .isEqualTo(ranking.best().get(0).merit());
            }
        }
        System.out.printf(
                "%d ties, slowest search %d ms, all %d ms%n",
                TIES, slowest / 1_000_000, (System.nanoTime() - start) / 1_000_000);
    }

    /** Every third has rubbers of different weights. */
    static LineupProblem randomTie(Random random) {
        LineupProblem alike = randomOfEqualRubbers(random);
        return random.nextInt(3) > 0
                ? alike
                : Ties.weighing(
                        alike,
                        random.ints(alike.rules().rubbers(), 1, 6).boxed().toArray(Integer[]::new));
    }

    private static LineupProblem randomOfEqualRubbers(Random random) {
        int players = 5 + random.nextInt(4);
        int rubbers = 3 + random.nextInt(2);
        OrderOfStrength order = OrderOfStrength.values()[random.nextInt(3)];
        DeciderKind decider = DeciderKind.values()[random.nextInt(4)];
        int most = players < 7 && rubbers == 3 ? 1 + random.nextInt(2) : 1;
        TieRules rules = Ties.rules(rubbers, most, order, decider);
        LineupProblem.Against against = LineupProblem.Against.values()[random.nextInt(2)];
        boolean kinds = random.nextInt(3) == 0;
        Squad ours = Ties.squad("a", players);
        Squad theirs = Ties.squad("b", 5 + random.nextInt(4));
        LineupProblem problem = LineupProblem.of(
                kinds ? Ties.withKinds(rules, randomKinds(random, rubbers)) : rules,
                kinds ? Ties.stating(ours, random) : ours,
                kinds ? Ties.stating(theirs, random) : theirs,
                Ties.random(random, 8),
                against,
                1);
        for (int wish = random.nextInt(4); wish > 0; wish--) {
            problem = problem.wishing(randomWish(random, players));
        }
        problem = problem.aimingAt(randomAim(random)).after(randomFreshness(random));
        if (random.nextInt(4) == 0) {
            problem = problem.learning();
        }
        return problem.promising(randomPromises(random, players));
    }

    private static List<RubberKind> randomKinds(Random random, int rubbers) {
        return java.util.stream.Stream.generate(() -> RubberKind.values()[random.nextInt(4)])
                .limit(rubbers)
                .toList();
    }

    /** Nothing, a floor for everybody, promises for the day to up to four players that other ties can or cannot give, or both. */
    static PlayingTime randomPromises(Random random, int players) {
        Map<PlayerId, Integer> promised = new HashMap<>();
        Map<PlayerId, Integer> played = new HashMap<>(Map.of(PlayerId.of("a1"), 1));
        for (int more = random.nextInt(5); more > 0; more--) {
            promised.put(PlayerId.of("a" + (1 + random.nextInt(players))), 1 + random.nextInt(3));
            played.put(PlayerId.of("a" + (1 + random.nextInt(players))), random.nextInt(2));
        }
        List<TiePlaces> others = new ArrayList<>();
        for (int tie = random.nextInt(3); tie > 0; tie--) {
            others.add(new TiePlaces(
                    2 + 2 * random.nextInt(2),
                    1 + random.nextInt(2),
                    Set.of(PlayerId.of("a" + (1 + random.nextInt(players))))));
        }
        return new PlayingTime(random.nextInt(4) > 0 ? 0 : 1 + random.nextInt(2), promised, played, others);
    }

    private static Aim randomAim(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Aim.RUBBERS;
            case 1 ->
                Aim.qualify(Map.of(
                        new Aim.Ended(3, 2),
                        random.nextDouble(),
                        new Aim.Ended(2, 3),
                        random.nextDouble(),
                        new Aim.Ended(4, 0),
                        1.0));
            default -> Aim.WIN;
        };
    }

    private static Freshness randomFreshness(Random random) {
        Map<PlayerId, Freshness.Load> loads = new java.util.HashMap<>();
        for (int player = random.nextInt(8); player > 0; player--) {
            loads.put(
                    PlayerId.of((random.nextBoolean() ? "a" : "b") + player),
                    new Freshness.Load(random.nextInt(6), OptionalInt.of(random.nextInt(40))));
        }
        return new Freshness(loads, Freshness.Cost.USUAL);
    }

    private static Wish randomWish(Random random, int players) {
        int[] two = random.ints(1, players + 1).distinct().limit(2).toArray();
        PlayerId one = PlayerId.of("a" + two[0]);
        Pair pair = Pair.of("a" + two[0], "a" + two[1]);
        return switch (Wish.Kind.values()[random.nextInt(4)]) {
            case TOGETHER -> Wish.together(pair);
            case APART -> Wish.apart(pair);
            case MUST_PLAY -> Wish.mustPlay(one);
            case MUST_REST -> Wish.mustRest(one);
        };
    }

    @Test
    void the_same_seed_finds_the_same_sheet() {
        LineupProblem problem = java.util.stream.IntStream.iterate(5, seed -> seed + 1)
                .mapToObj(seed -> randomTie(new Random(seed)))
                .filter(tie -> Ranking.of(new Board(tie), true, 1).best().size() == 1)
                .findFirst()
                .orElseThrow();
        Board board = new Board(problem);
        assertThat(LineupSolver.best(board, Budget.usual(3)).orElseThrow())
                .isEqualTo(
                        LineupSolver.best(new Board(problem), Budget.usual(3)).orElseThrow());
    }

    @Test
    @Timeout(20)
    void a_search_that_is_stopped_gives_the_best_so_far() {
        Board board = new Board(Ties.problem(4, 8, Ties.even()));
        Budget stoppedAtOnce = Budget.ofSteps(Integer.MAX_VALUE, 1);
        stoppedAtOnce.stop().press();
        LineupSolver.best(board, stoppedAtOnce); // returns, with or without a sheet
        Budget stoppedLater = Budget.ofSteps(Integer.MAX_VALUE, 1);
        CompletableFuture.runAsync(
                stoppedLater.stop()::press, CompletableFuture.delayedExecutor(300, TimeUnit.MILLISECONDS));
        assertThat(LineupSolver.best(board, stoppedLater)).isPresent();
    }

    @Test
    @Timeout(20)
    void a_search_ends_when_its_time_is_up() {
        Budget brief = Budget.ofSteps(Integer.MAX_VALUE, 1).within(Duration.ofMillis(200));
        assertThat(LineupSolver.best(new Board(Ties.problem(4, 8, Ties.even())), brief))
                .isPresent();
    }
}
