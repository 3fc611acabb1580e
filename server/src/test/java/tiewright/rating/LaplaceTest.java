package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

class LaplaceTest {
    private static final double FLAT = 1e-10;

    /** Agresti, Categorical Data Analysis, 2nd ed., table 10.11: American League East 1987, wins of the row over the column. */
    private static final int[][] LEAGUE = {
        {0, 7, 9, 7, 7, 9, 11},
        {6, 0, 7, 5, 11, 9, 9},
        {4, 6, 0, 7, 7, 8, 12},
        {6, 8, 6, 0, 6, 7, 10},
        {6, 2, 6, 7, 0, 7, 12},
        {4, 4, 5, 6, 6, 0, 6},
        {2, 4, 1, 3, 1, 7, 0}
    };

    /** Estimates as printed there (1.58 … 0.68) and with their standard errors in Turner and Firth, J. Stat. Software 48(9). */
    @Test
    void finds_the_published_abilities_of_a_league() {
        List<Observation> games = new ArrayList<>();
        for (int one = 0; one < 7; one++) {
            for (int other = one + 1; other < 7; other++) {
                int won = LEAGUE[one][other];
                RallyCount count = new RallyCount(won, won + LEAGUE[other][one], 0, 1);
                boolean last = other == 6; // Baltimore is the zero of the scale
                games.add(new Observation(
                        last ? new int[] {one} : new int[] {one, other},
                        last ? new double[] {1} : new double[] {1, -1},
                        count));
            }
        }
        Laplace.Posterior found = Laplace.fit(new double[6], flat(6), games);
        double[] abilities = {1.581356, 1.436408, 1.294485, 1.247618, 1.107698, 0.683853};
        double[] errors = {.3433, .3396, .3367, .3359, .3339, .3319};
        for (int team = 0; team < 6; team++) {
            assertThat(found.mode()[team]).isCloseTo(abilities[team], within(1e-6));
            assertThat(sd(found, team)).isCloseTo(errors[team], within(5e-5));
        }
    }

    private static double[] flat(int size) {
        double[] precision = new double[size];
        Arrays.fill(precision, FLAT);
        return precision;
    }

    private static double sd(Laplace.Posterior found, int index) {
        double[] one = new double[found.mode().length];
        one[index] = 1;
        return Math.sqrt(Arrays.stream(found.precision().half(one))
                .map(each -> each * each)
                .sum());
    }

    /** Cases of size in each herd and period; lme4's data set cbpp (Lesnoff et al., Prev. Vet. Med. 2004). */
    private static final String HERDS =
            "2/14 3/12 4/9 0/5; 3/22 1/18 1/21 -; 8/22 2/16 0/16 2/20; 2/10 0/10 2/9 0/6; 5/18 0/25 0/24 1/4; 3/17 0/17 0/18 1/20;"
                    + " 8/16 1/10 3/9 0/5; 12/34 - - -; 2/9 0/6 0/8 0/6; 1/22 1/22 0/18 2/22; 0/25 5/27 3/22 1/22; 2/10 1/8 0/6 0/5;"
                    + " 1/21 2/24 0/19 0/23; 11/19 0/2 0/3 0/2; 1/19 1/15 1/15 0/15";

    /** The example of the documentation of lme4, glmer, Laplace approximation; allowed difference 0.001. */
    @Test
    void finds_the_published_mixed_model_of_fifteen_herds() {
        PointValuePair best = new SimplexOptimizer(1e-12, 1e-12)
                .optimize(
                        new MaxEval(20_000),
                        new ObjectiveFunction(LaplaceTest::logLikelihood),
                        GoalType.MAXIMIZE,
                        new InitialGuess(new double[] {-1, -1, -1, -1, -0.5}),
                        new NelderMeadSimplex(5, 0.4));
        double[] periods = {-1.3983, -0.9919, -1.1282, -1.5797};
        for (int period = 0; period < 4; period++) {
            assertThat(best.getPoint()[period]).isCloseTo(periods[period], within(0.001));
        }
        assertThat(Math.exp(best.getPoint()[4])).isCloseTo(0.6421, within(0.001));
        assertThat(best.getValue()).isCloseTo(-92.0266, within(0.001));
    }

    /** First period, the other three against it, log of the standard deviation of herds. */
    private static double logLikelihood(double[] at) {
        double sd = Math.exp(at[4]);
        double sum = 0;
        for (String herd : HERDS.split(";")) {
            List<Observation> cases = new ArrayList<>();
            String[] periods = herd.trim().split(" ");
            for (int period = 0; period < periods.length; period++) {
                if (!periods[period].equals("-")) {
                    int ill = Integer.parseInt(periods[period].split("/")[0]);
                    int size = Integer.parseInt(periods[period].split("/")[1]);
                    double base = at[0] + (period == 0 ? 0 : at[period]);
                    cases.add(new Observation(new int[] {0}, new double[] {1}, new RallyCount(ill, size, base, 1)));
                    sum += Gamma.logGamma(size + 1.0) - Gamma.logGamma(ill + 1.0) - Gamma.logGamma(size - ill + 1.0);
                }
            }
            Laplace.Posterior found = Laplace.fit(new double[1], new double[] {1 / (sd * sd)}, cases);
            double mode = found.mode()[0];
            sum += cases.stream().mapToDouble(each -> each.log(found.mode())).sum()
                    - mode * mode / (2 * sd * sd)
                    - Math.log(sd)
                    + Math.log(sd(found, 0));
        }
        return sum;
    }

    /** Sparse and dense parts together, beside the library's dense inverse. */
    @Test
    void a_large_matrix_of_few_meetings_has_the_inverse_that_a_library_finds() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        int size = 240;
        double[] diagonal = random.doubles(size, 0.05, 2).toArray();
        RealMatrix whole = MatrixUtils.createRealDiagonalMatrix(diagonal);
        Precision.Builder builder = new Precision.Builder(diagonal);
        for (int i = 0; i < 600; i++) {
            int[] at = random.ints(0, size).distinct().limit(6).toArray();
            double[] weights = random.doubles(6, -1, 1).toArray();
            double times = random.nextDouble();
            builder.add(at, weights, times);
            for (int row = 0; row < 6; row++) {
                for (int column = 0; column < 6; column++) {
                    whole.addToEntry(at[row], at[column], times * weights[row] * weights[column]);
                }
            }
        }
        RealMatrix inverse = MatrixUtils.inverse(whole);
        Precision precision = builder.factored();
        for (int i = 0; i < size; i++) {
            double[] one = new double[size];
            one[i] = 1;
            assertThat(Arrays.stream(precision.half(one))
                            .map(each -> each * each)
                            .sum())
                    .as("%s", seed)
                    .isCloseTo(inverse.getEntry(i, i), within(1e-9));
            double[] solved = precision.solve(one);
            for (int j = 0; j < size; j++) {
                assertThat(solved[j]).as("%s", seed).isCloseTo(inverse.getEntry(i, j), within(1e-9));
            }
        }
    }
}
