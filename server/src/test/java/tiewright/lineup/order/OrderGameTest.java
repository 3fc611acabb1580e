package tiewright.lineup.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.lineup.game.MatrixGame;

class OrderGameTest {
    /** Rock-solid ladder: the stronger pair of any two wins seven times in ten, equal pairs are even. */
    private static final double[][] LADDER = {{0.5, 0.7, 0.7}, {0.3, 0.5, 0.7}, {0.3, 0.3, 0.5}};

    @Test
    void even_ties_are_worth_a_half_when_both_draw_lots() {
        OrderGame game = OrderGame.of(LADDER, 2, 0.5);
        assertThat(game.value()).isCloseTo(0.5, within(1e-12));
        assertThat(game.straight().ifStraight()).isEqualTo(0.5);
        assertThat(game.orders()).hasSize(6).allMatch(order -> order.weight() == 1.0 / 6);
    }

    /** A captains' saying (common practice, no source): against straight order send last, first, second. */
    @Test
    void last_first_second_beats_straight() {
        OrderGame game = OrderGame.of(LADDER, 2, 0.5);
        assertThat(game.bestReply().pairs()).isEqualTo(List.of(2, 0, 1));
        // 0.3, 0.7, 0.7 by hand: 0.49 + 2 x 0.3 x 0.7 x 0.3
        assertThat(game.bestReply().ifStraight()).isCloseTo(0.49 + 0.126, within(1e-12));
    }

    @Test
    void drawing_lots_is_best_against_every_order_of_theirs_and_the_linear_programme_agrees() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 20; i++) {
            int size = 1 + random.nextInt(4);
            double[][] chances = new double[size][size];
            for (double[] row : chances) {
                Arrays.setAll(row, j -> random.nextDouble());
            }
            int toWin = 1 + random.nextInt(size);
            double decider = random.nextDouble();
            OrderGame game = OrderGame.of(chances, toWin, decider);
            MatrixGame solved = MatrixGame.solve(matrix(chances, game.orders(), toWin, decider));
            assertThat(game.value()).as("%s, game %d", seed, i).isCloseTo(solved.value(), within(1e-6));
        }
    }

    /** Ours in one order against theirs in another, by putting their columns into that order. */
    private static double[][] matrix(double[][] chances, List<OrderGame.Ordered> orders, int toWin, double decider) {
        double[][] payoff = new double[orders.size()][orders.size()];
        for (int theirs = 0; theirs < orders.size(); theirs++) {
            List<Integer> columns = orders.get(theirs).pairs();
            double[][] turned = new double[chances.length][chances.length];
            for (int row = 0; row < chances.length; row++) {
                for (int rubber = 0; rubber < chances.length; rubber++) {
                    turned[row][rubber] = chances[row][columns.get(rubber)];
                }
            }
            List<OrderGame.Ordered> against =
                    OrderGame.of(turned, toWin, decider).orders();
            for (int ours = 0; ours < orders.size(); ours++) {
                payoff[ours][theirs] = against.get(ours).ifStraight();
            }
        }
        return payoff;
    }

    @Test
    void the_decider_counts_only_when_the_rubbers_are_level() {
        double[][] even = new double[4][4];
        Arrays.stream(even).forEach(row -> Arrays.fill(row, 0.5));
        assertThat(OrderGame.of(even, 3, 1).value()).isCloseTo(11.0 / 16, within(1e-12));
        assertThat(OrderGame.of(even, 3, 0).value()).isCloseTo(5.0 / 16, within(1e-12));
        assertThat(OrderGame.of(even, 2, 0.9).value()).isCloseTo(11.0 / 16, within(1e-12));
        assertThat(OrderGame.canBeLevel(4, 3)).isTrue();
        assertThat(OrderGame.canBeLevel(4, 2)).isFalse();
        assertThat(OrderGame.canBeLevel(3, 2)).isFalse();
    }

    @Test
    void refuses_tables_that_are_not_square_and_chances_that_are_none() {
        assertThatThrownBy(() -> OrderGame.of(new double[][] {{0.5, 0.5}}, 1, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OrderGame.of(new double[][] {{1.5}}, 1, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OrderGame.of(new double[][] {{0.5}}, 2, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OrderGame.of(new double[0][0], 1, 0.5)).isInstanceOf(IllegalArgumentException.class);
    }
}
