package tiewright.lineup.tie;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import tiewright.bench.Timings;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice;

/**
 * How long the captain's advice takes: eight players, four rubbers, random strengths, two wishes. Both ways to the best sheet
 * are timed on the same ties in one run, so that their ratio means something.
 */
public final class LineupBench {
    private static final int WARM_UP = 50;
    private static final int RUNS = 100;

    private final LineupProblem[] ties = new LineupProblem[WARM_UP + RUNS];
    private final Board[] boards;

    private LineupBench(long seed) {
        Random random = new Random(seed);
        Arrays.setAll(
                ties,
                i -> Ties.problem(4, 8, Ties.doubted(random, 8))
                        .wishing(Wish.apart(Pair.of("a1", "a2")), Wish.mustPlay(PlayerId.of("a8"))));
        boards = Arrays.stream(ties).map(Board::new).toArray(Board[]::new);
    }

    /** Prints the times of ties drawn from this seed. */
    public static void run(long seed) {
        System.out.println("  seed " + seed);
        new LineupBench(seed).run();
    }

    private void run() {
        time("lay a tie out in numbers", i -> new Board(ties[i]));
        Timings every = time("best sheet by trying every one", i -> Ranking.of(boards[i], true, 1));
        Timings search = time("best sheet by the search", i -> LineupSolver.best(boards[i], Budget.usual(i)));
        Timings whole =
                time("a whole proposal with doubt and prices", i -> Proposals.propose(ties[i], Budget.usual(i)));
        Timings guessed =
                time("the same at the best guess", i -> Proposals.propose(ties[i].atBestGuess(), Budget.usual(i)));
        whole.printRatio("mean over the doubt / best guess", guessed);
        time("advice for the decider", i -> DeciderAdvice.of(ties[i], Optional.empty(), Optional.empty(), Set.of()));
        search.printRatio("search / trying every one", every);
        System.out.printf("  the search found the best value in %d of %d ties%n", found(), boards.length);
    }

    private long found() {
        long found = 0;
        for (int i = 0; i < boards.length; i++) {
            Board board = boards[i];
            Merit best = Ranking.of(board, true, 1).best().get(0).merit();
            found += LineupSolver.best(board, Budget.usual(i))
                            .filter(line -> Merit.of(board, line).equals(best))
                            .isPresent()
                    ? 1
                    : 0;
        }
        return found;
    }

    private static Timings time(String what, java.util.function.IntConsumer work) {
        return Timings.of(WARM_UP, RUNS, work).print(what);
    }
}
