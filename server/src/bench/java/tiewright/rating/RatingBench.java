package tiewright.rating;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunctionGradient;
import org.hipparchus.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer;
import tiewright.bench.Timings;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

/**
 * How long it takes to rate 200 players from 5,000 final scores: 25 clubs of eight whose pairs change, and as the worst case any
 * four of 200 together, which makes nearly every pair of every game a new one. Beside it the same posterior by a general library:
 * the mode by conjugate gradients, the covariance by inverting the whole matrix.
 */
public final class RatingBench {
    private static final List<Format> FORMATS = List.of(Format.sideOut(11), Format.rally(15), Format.rally(21));
    private static final int PLAYERS = 200;
    private static final int GAMES = 5000;

    private RatingBench() {}

    /** Prints the times for games thrown by this seed. */
    public static void run(long seed) {
        System.out.println("  seed " + seed);
        Evidence clubs = games(
                seed,
                IntStream.range(0, 25)
                        .mapToObj(i -> World.club("c" + i + "-", PLAYERS / 25))
                        .toList());
        Timings ours = time("25 clubs of eight", clubs, 3, 5);
        List<Observation> seen = new ArrayList<>();
        double[][] prior = pose(clubs, seen);
        Timings library = Timings.of(0, 2, run -> byLibrary(prior, seen, run == 0))
                .print("  the same by conjugate gradients and an inverse");
        ours.printRatio("  ours / library", library);
        time("any four of 200", games(seed, List.of(World.club("p", PLAYERS))), 1, 3);
        time("25 clubs of eight over two years, nothing stated", overYears(clubs, 730), 1, 3);
    }

    /** The same games on days one after another: forms move, and the spreads are estimated. */
    private static Evidence overYears(Evidence evidence, int days) {
        List<PastGame> games = new ArrayList<>();
        for (PastGame game : evidence.games()) {
            LocalDate day = game.date().minusDays(days - (long) days * games.size() / GAMES);
            games.add(new PastGame(day, game.home(), game.away(), game.score(), game.format()));
        }
        return new Evidence(List.of(), games, List.of(), Ageing.none(), Stated.nothing());
    }

    private static Timings time(String what, Evidence evidence, int warmUp, int runs) {
        int unknowns = unknowns(evidence).means(Assumptions.of(evidence.stated(), false)).length;
        System.out.printf(
                Locale.ROOT, "  %s: %d players, %d games, %d unknowns%n", what, PLAYERS, evidence.size(), unknowns);
        return Timings.of(warmUp, runs, run -> Rating.fit(Prior.none(), evidence))
                .print("  strengths with their doubt");
    }

    private static Evidence games(long seed, List<List<PlayerId>> clubs) {
        Random random = new Random(seed);
        World world = World.from(Prior.none(), random, clubs);
        while (world.evidence().games().size() < GAMES) {
            List<PlayerId> ours = clubs.get(random.nextInt(clubs.size()));
            List<PlayerId> theirs = clubs.get(random.nextInt(clubs.size()));
            world.meet(FORMATS.get(random.nextInt(3)), world.anyPair(ours), world.anyPair(theirs));
        }
        return world.evidence();
    }

    /** Means and precisions of the prior; what was seen goes into the list. */
    private static double[][] pose(Evidence evidence, List<Observation> seen) {
        Unknowns unknowns = unknowns(evidence);
        Map<String, ScoreCurve> curves = new HashMap<>();
        evidence.games()
                .forEach(game -> seen.add(unknowns.observed(
                        game,
                        curves.computeIfAbsent(
                                game.format().code() + game.score(),
                                any -> new ScoreCurve(ServeRates.PLAIN, game.format(), game.score())))));
        return new double[][] {unknowns.means(unknowns.assumptions()), unknowns.precisions(unknowns.assumptions())};
    }

    private static Unknowns unknowns(Evidence evidence) {
        return Unknowns.of(Prior.none(), evidence, Assumptions.of(evidence.stated(), false));
    }

    private static void byLibrary(double[][] prior, List<Observation> seen, boolean compare) {
        double[] mean = prior[0];
        double[] precision = prior[1];
        double[] mode = new NonLinearConjugateGradientOptimizer(
                        NonLinearConjugateGradientOptimizer.Formula.POLAK_RIBIERE, new SimpleValueChecker(1e-14, 1e-10))
                .optimize(
                        new MaxEval(100_000),
                        GoalType.MAXIMIZE,
                        new InitialGuess(mean),
                        new ObjectiveFunction(at -> {
                            double sum = IntStream.range(0, at.length)
                                    .mapToDouble(i -> -precision[i] * (at[i] - mean[i]) * (at[i] - mean[i]) / 2)
                                    .sum();
                            return sum
                                    + seen.stream()
                                            .mapToDouble(each -> each.log(at))
                                            .sum();
                        }),
                        new ObjectiveFunctionGradient(at -> {
                            double[] slope = IntStream.range(0, at.length)
                                    .mapToDouble(i -> precision[i] * (mean[i] - at[i]))
                                    .toArray();
                            seen.forEach(each -> each.addSlope(at, slope));
                            return slope;
                        }))
                .getPoint();
        RealMatrix curvature = MatrixUtils.createRealDiagonalMatrix(precision);
        for (Observation each : seen) {
            double bend = each.bend(mode);
            for (int i = 0; i < each.at().length; i++) {
                for (int j = 0; j < each.at().length; j++) {
                    curvature.addToEntry(each.at()[i], each.at()[j], bend * each.weights()[i] * each.weights()[j]);
                }
            }
        }
        RealMatrix covariance = MatrixUtils.inverse(curvature);
        if (compare) {
            double[] ours = Laplace.fit(mean, precision, seen).mode();
            double gap = IntStream.range(0, mode.length)
                    .mapToDouble(i -> Math.abs(ours[i] - mode[i]))
                    .max()
                    .orElse(0);
            System.out.printf(
                    Locale.ROOT,
                    "    largest difference to the library's mode %.1e, its first standard deviation %.4f%n",
                    gap,
                    Math.sqrt(covariance.getEntry(0, 0)));
        }
    }
}
