package tiewright.lineup.game;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

class MatrixGameTest {
    private static final Offset<Double> EXACT = within(1e-6);

    /** Sedgewick and Wayne, Algorithms, algs4 library, example 1 of the two-person zero-sum game. */
    @Test
    void solves_the_first_example_of_the_algorithms_library() {
        MatrixGame game = MatrixGame.solve(new double[][] {{30, -10, 20}, {10, 20, -20}});
        assertThat(game.value()).isCloseTo(20.0 / 7, EXACT);
        assertThat(game.row()).containsExactly(new double[] {4.0 / 7, 3.0 / 7}, EXACT);
        assertThat(game.column()).containsExactly(new double[] {0, 4.0 / 7, 3.0 / 7}, EXACT);
    }

    private static final double[][] CHVATAL = {
        {0, 2, -3, 0},
        {-2, 0, 0, 3},
        {3, 0, 0, -4},
        {0, -3, 4, 0},
        {0, 0, -3, 3},
        {-2, 2, 0, 0},
        {3, -3, 0, 0},
        {0, 0, 4, -4}
    };

    /** Chvatal, Linear Programming, page 234. */
    @Test
    void solves_the_eight_by_four_game_of_a_textbook() {
        MatrixGame game = MatrixGame.solve(CHVATAL);
        assertThat(game.value()).isCloseTo(4.0 / 99, EXACT);
        assertThat(game.row()).containsExactly(over(99, 0, 56, 40, 0, 0, 2, 0, 1), EXACT);
        assertThat(game.column()).containsExactly(over(99, 28, 30, 21, 20), EXACT);
    }

    /** Chvatal, Linear Programming, page 230. */
    @Test
    void its_first_four_rows_are_a_fair_game() {
        double[][] four = {CHVATAL[0], CHVATAL[1], CHVATAL[2], CHVATAL[3]};
        assertThat(MatrixGame.solve(four).value()).isCloseTo(0, EXACT);
    }

    /** Ferguson, Game Theory, part II, the Blotto game of four units against three (from memory, worked again in fractions). */
    @Test
    void solves_blotto_of_four_against_three() {
        double[][] blotto = {{4, 0, 2, 1}, {0, 4, 1, 2}, {1, -1, 3, 0}, {-1, 1, 0, 3}, {-2, -2, 2, 2}};
        MatrixGame game = MatrixGame.solve(blotto);
        assertThat(game.value()).isCloseTo(14.0 / 9, EXACT);
        assertThat(game.row()).containsExactly(over(9, 4, 4, 0, 0, 1), EXACT);
        Mixes published = new Mixes(game.row(), over(18, 1, 1, 8, 8));
        assertThat(published.ceiling(blotto)).isCloseTo(14.0 / 9, EXACT);
        assertThat(new Mixes(game.row(), game.column()).ceiling(blotto)).isCloseTo(14.0 / 9, EXACT);
    }

    /** Ferguson, Game Theory, part II, 2.5: with the same numbers in each row and column, even mixes are best for both. */
    @Test
    void a_latin_square_is_worth_its_mean() {
        double[] numbers = {3, -1, 4, 1, -5, 9};
        double[][] square = new double[6][6];
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                square[i][j] = numbers[(i + j) % 6];
            }
        }
        assertThat(MatrixGame.solve(square).value()).isCloseTo(11.0 / 6, EXACT);
    }

    @Test
    void a_saddle_point_is_played_pure() {
        MatrixGame game = MatrixGame.solve(new double[][] {{3, 5}, {2, 1}});
        assertThat(game.value()).isCloseTo(3, EXACT);
        assertThat(game.row()).containsExactly(new double[] {1, 0}, EXACT);
        assertThat(game.column()).containsExactly(new double[] {1, 0}, EXACT);
    }

    @Test
    void takes_one_row_one_column_zeros_negatives_and_twins() {
        assertThat(MatrixGame.solve(new double[][] {{-7}}).value()).isEqualTo(-7);
        assertThat(MatrixGame.solve(new double[][] {{4, -2, 9}}).value()).isCloseTo(-2, EXACT);
        assertThat(MatrixGame.solve(new double[][] {{4}, {-2}, {9}}).value()).isCloseTo(9, EXACT);
        assertThat(MatrixGame.solve(new double[5][3]).value()).isZero();
        MatrixGame twins = MatrixGame.solve(new double[][] {{-1, -3}, {-1, -3}, {-3, -1}, {-3, -1}});
        assertThat(twins.value()).isCloseTo(-2, EXACT);
        assertThat(twins.row()[0] + twins.row()[1]).isCloseTo(0.5, EXACT);
    }

    @Test
    void takes_huge_and_tiny_numbers() {
        assertThat(MatrixGame.solve(new double[][] {{1e300, -1e300}, {-1e300, 1e300}})
                                .value()
                        / 1e300)
                .isCloseTo(0, EXACT);
        assertThat(MatrixGame.solve(new double[][] {{Double.MAX_VALUE, -Double.MAX_VALUE}, {-1, 1}})
                        .gap())
                .isFinite();
        MatrixGame tiny = MatrixGame.solve(new double[][] {{2e-300, 1e-300}, {1e-300, 2e-300}});
        assertThat(tiny.value() / 1e-300).isCloseTo(1.5, EXACT);
        MatrixGame thousands = MatrixGame.solve(new double[][] {{30_000, -10_000, 20_000}, {10_000, 20_000, -20_000}});
        assertThat(thousands.value()).isCloseTo(20_000.0 / 7, EXACT);
    }

    @Test
    void refuses_what_is_no_table_of_numbers() {
        assertThatThrownBy(() -> MatrixGame.solve(new double[0][0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MatrixGame.solve(new double[1][0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MatrixGame.solve(new double[][] {{1, 2}, {1}}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MatrixGame.solve(new double[][] {{1, Double.NaN}}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void both_sides_can_make_sure_of_the_value_of_random_games() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 300; i++) {
            double[][] payoff = new double[1 + random.nextInt(12)][1 + random.nextInt(12)];
            int grain = 1 + random.nextInt(6); // few different numbers: many equal entries
            fill(payoff, () -> random.nextInt(grain) - grain / 2);
            MatrixGame game = MatrixGame.solve(payoff);
            for (int j = 0; j < payoff[0].length; j++) {
                int column = j;
                double got = 0;
                for (int k = 0; k < payoff.length; k++) {
                    got += game.row()[k] * payoff[k][column];
                }
                assertThat(got).as("%s, game %d", seed, i).isGreaterThan(game.value() - 1e-6);
            }
            assertThat(game.gap()).as("%s, game %d", seed, i).isLessThan(1e-6);
            assertThat(java.util.Arrays.stream(game.row()).sum()).isCloseTo(1, EXACT);
        }
    }

    @Test
    void solves_large_games_to_the_same_gap() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        double[][] wide = new double[40][2_520];
        fill(wide, random::nextDouble);
        assertThat(MatrixGame.solve(wide).gap()).as(seed.toString()).isLessThan(1e-6);
        double[][] square = new double[300][300];
        fill(square, random::nextDouble);
        assertThat(MatrixGame.solve(square).gap()).as(seed.toString()).isLessThan(1e-6);
    }

    private static void fill(double[][] payoff, java.util.function.DoubleSupplier entry) {
        for (double[] row : payoff) {
            java.util.Arrays.setAll(row, j -> entry.getAsDouble());
        }
    }

    private static double[] over(int whole, int... parts) {
        return java.util.Arrays.stream(parts)
                .mapToDouble(part -> (double) part / whole)
                .toArray();
    }
}
