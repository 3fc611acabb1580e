package tiewright.lineup;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.IntConsumer;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/**
 * How long the captain's advice takes: eight players, four rubbers, random strengths, two wishes. Run it by hand on an idle
 * machine after {@code mvn test-compile}; it prints the median and the worst of the runs after a warm-up, in milliseconds.
 * Both ways to the best sheet are timed on the same ties in one run, so that their ratio means something.
 */
final class LineupBench {
  private static final int WARM_UP = 30;
  private static final int RUNS = 100;

  private LineupBench() {}

  public static void main(String[] args) {
    long seed = args.length > 0 ? Long.parseLong(args[0]) : 1;
    System.out.printf("seed %d, %d processors, Java %s%n", seed, Runtime.getRuntime().availableProcessors(), Runtime.version());
    LineupProblem[] ties = ties(new Random(seed));
    Board[] boards = Arrays.stream(ties).map(Board::new).toArray(Board[]::new);
    time("lay a tie out in numbers", i -> new Board(ties[i]));
    time("best sheet by trying every one", i -> Ranking.of(boards[i], true, 1));
    time("best sheet by the search", i -> LineupSolver.best(boards[i], Budget.usual(i)));
    time("a whole proposal with doubt and prices", i -> Proposals.propose(ties[i], Budget.usual(i)));
    time("advice for the decider", i -> DeciderAdvice.of(ties[i], Optional.empty(), Optional.empty(), Set.of()));
  }

  private static LineupProblem[] ties(Random random) {
    LineupProblem[] ties = new LineupProblem[WARM_UP + RUNS];
    Arrays.setAll(
        ties,
        i -> Ties.problem(4, 8, Ties.random(random, 8)).wishing(Wish.apart(Pair.of("a1", "a2")), Wish.mustPlay(PlayerId.of("a8"))));
    return ties;
  }

  private static void time(String what, IntConsumer work) {
    double[] taken = new double[RUNS];
    for (int i = 0; i < WARM_UP + RUNS; i++) {
      long start = System.nanoTime();
      work.accept(i);
      if (i >= WARM_UP) {
        taken[i - WARM_UP] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(taken);
    System.out.printf("%-40s median %8.2f  worst %8.2f%n", what, taken[RUNS / 2], taken[RUNS - 1]);
  }
}
