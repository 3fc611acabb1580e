package tiewright.lineup.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.Belief;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Purpose;
import tiewright.lineup.Squad;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.lineup.game.MatrixGame;
import tiewright.lineup.game.OracleGame;
import tiewright.lineup.tie.Board;
import tiewright.lineup.tie.SheetSearch;
import tiewright.rating.RallyModel;

/** The blind game over all legal sheets of both clubs, against plain matrices and published games. */
class BlindGameTest {
    private static OracleGame.Payoff matrix(double[][] payoff) {
        return new OracleGame.Payoff() {
            @Override
            public int rows() {
                return payoff.length;
            }

            @Override
            public int columns() {
                return payoff[0].length;
            }

            @Override
            public double at(int row, int column) {
                return payoff[row][column];
            }
        };
    }

    /** V. Chvatal, Linear Programming, p. 234, as in R. Sedgewick and K. Wayne's algorithms library: worth 4/99. */
    @Test
    void solves_the_eight_by_four_game_of_a_textbook() {
        OracleGame game = OracleGame.solve(matrix(new double[][] {
            {0, 2, -3, 0},
            {-2, 0, 0, 3},
            {3, 0, 0, -4},
            {0, -3, 4, 0},
            {0, 0, -3, 3},
            {-2, 2, 0, 0},
            {3, -3, 0, 0},
            {0, 0, 4, -4}
        }));
        assertThat(game.guarantee()).isCloseTo(4.0 / 99, within(1e-5));
        assertThat(game.gap()).isLessThan(1e-5);
    }

    /** Rows, columns and guarantees as in the full matrix, of interchangeable rubbers, ordered ones, and short squads. */
    @Test
    void is_worth_what_the_whole_matrix_is_worth() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 6; i++) {
            OrderOfStrength order = OrderOfStrength.values()[i % 3];
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(2, order),
                    Ties.squad("a", 4 + random.nextInt(3)),
                    Ties.squad("b", 3 + random.nextInt(3)),
                    Ties.random(random, 8),
                    LineupProblem.Against.STRAIGHT,
                    1);
            SheetGame laid = SheetGame.of(problem).orElseThrow();
            double[][] whole = new double[laid.rows()][laid.columns()];
            for (int row = 0; row < whole.length; row++) {
                for (int column = 0; column < whole[row].length; column++) {
                    whole[row][column] = laid.at(row, column);
                }
            }
            BlindGame game = BlindGame.of(problem).orElseThrow();
            assertThat(game.value())
                    .as("%s, tie %d", seed, i)
                    .isCloseTo(MatrixGame.solve(whole).value(), within(1e-5));
            assertThat(game.gap()).isLessThan(1e-4);
            assertThat(game.mix().stream()
                            .mapToDouble(BlindGame.Weighted::weight)
                            .sum())
                    .isCloseTo(1, within(1e-9));
        }
    }

    /** The reduction by symmetry changes nothing: pairs in a fixed list of orders, and the mean over orders. */
    @Test
    void interchangeable_rubbers_reduced_are_worth_what_all_sheets_are_worth() {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(3),
                Ties.squad("a", 6),
                Ties.squad("b", 6),
                Ties.random(new Random(8), 6),
                LineupProblem.Against.STRAIGHT,
                1);
        BlindGame reduced = BlindGame.of(problem).orElseThrow();
        assertThat(reduced.interchangeable()).isTrue();
        assertThat(reduced.ourSheets()).isEqualTo(15);
        double[][] all = new double[90][90];
        Board own = new Board(problem);
        List<Sheet> ours = sheets(own);
        LineupProblem turned = new LineupProblem(
                problem.rules(),
                problem.theirs(),
                problem.ours(),
                Belief.straight(problem.rules(), problem.ours()),
                List.of(),
                Purpose.WIN,
                problem.freshness(),
                problem.strengths());
        List<Sheet> theirs = sheets(new Board(turned));
        for (int column = 0; column < 90; column++) {
            Board against = new Board(problem.expecting(Belief.surely(theirs.get(column))));
            for (int row = 0; row < 90; row++) {
                all[row][column] = against.worth().of(against.line(ours.get(row)));
            }
        }
        assertThat(reduced.value()).isCloseTo(MatrixGame.solve(all).value(), within(1e-5));
    }

    /** By hand: only rubber 1 counts, so that the game is won by who names the better pair there: both name their best two. */
    @Test
    void with_one_rubber_that_outweighs_the_rest_only_its_pairs_matter() {
        LineupProblem problem = Ties.weighing(
                LineupProblem.of(
                        Ties.rules(3),
                        Ties.squad("a", 6),
                        Ties.squad("b", 6),
                        Ties.random(new Random(8), 6).atBestGuess(),
                        LineupProblem.Against.STRAIGHT,
                        1),
                9,
                1,
                1);
        BlindGame game = BlindGame.of(problem).orElseThrow();
        assertThat(game.interchangeable()).isFalse();
        assertThat(game.ourSheets()).isEqualTo(90);
        Board board = new Board(problem);
        double value = board.pairs().stream()
                .mapToDouble(ours -> theirPairs(problem)
                        .mapToDouble(theirs -> problem.edge(ours, theirs))
                        .min()
                        .orElseThrow())
                .max()
                .orElseThrow();
        assertThat(game.value())
                .isCloseTo(RallyModel.rubberChance(problem.rules().scoring(), 1, value), within(1e-6));
    }

    private static java.util.stream.Stream<Pair> theirPairs(LineupProblem problem) {
        List<PlayerId> players =
                problem.theirs().present().stream().map(member -> member.id()).toList();
        return players.stream()
                .flatMap(one -> players.stream()
                        .filter(other -> one.compareTo(other) < 0)
                        .map(other -> Pair.of(one, other)));
    }

    /** Eight players of whom nothing is known, under an order that allows many sheets: all are worth the same. */
    @Test
    void equal_sheets_share_the_weight_so_that_not_everybody_draws_the_same_one() {
        LineupProblem problem = LineupProblem.of(
                Ties.rules(3, OrderOfStrength.RANK_SUM),
                Ties.squad("a", 6),
                Ties.squad("b", 6),
                Ties.even(),
                LineupProblem.Against.STRAIGHT,
                1);
        BlindGame game = BlindGame.of(problem).orElseThrow();
        assertThat(game.mix()).hasSizeGreaterThan(3);
        assertThat(game.mix().stream()
                        .mapToDouble(BlindGame.Weighted::weight)
                        .max()
                        .orElseThrow())
                .isLessThan(0.5);
        assertThat(game.mix().stream().mapToDouble(BlindGame.Weighted::weight).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(new Random(3).longs(6).mapToObj(game::draw).distinct()).hasSizeGreaterThan(1);
    }

    private static List<Sheet> sheets(Board board) {
        List<Sheet> sheets = new java.util.ArrayList<>();
        SheetSearch.run(board, true, 1_000_000, line -> sheets.add(board.sheet(line)));
        return sheets;
    }

    @Test
    void a_draw_is_one_of_its_sheets_in_any_order_and_the_same_for_the_same_seed() {
        LineupProblem problem = Ties.problem(4, 8, Ties.random(new Random(2), 8));
        BlindGame game = BlindGame.of(problem).orElseThrow();
        Sheet drawn = game.draw(5);
        assertThat(drawn).isEqualTo(game.draw(5));
        assertThat(game.mix())
                .anySatisfy(one -> assertThat(one.sheet().pairs().values())
                        .containsExactlyInAnyOrderElementsOf(drawn.pairs().values()));
        assertThat(java.util.stream.LongStream.range(0, 40)
                        .mapToObj(game::draw)
                        .distinct()
                        .count())
                .isGreaterThan(10);
    }

    /** A captains' saying (common practice, no source): against straight order send last, first, second. */
    @Test
    void a_sure_reading_gains_over_the_draw() {
        LineupProblem problem = LineupProblem.of(
                        Ties.rules(3),
                        Ties.squad("a", 6),
                        Ties.squad("b", 6),
                        ladder(),
                        LineupProblem.Against.UNKNOWN,
                        1)
                .wishing(
                        Wish.together(Pair.of("a1", "a2")),
                        Wish.together(Pair.of("a3", "a4")),
                        Wish.together(Pair.of("a5", "a6")))
                .atBestGuess();
        OrderAdvice advice = OrderAdvice.of(problem, List.of(), 1).orElseThrow();
        assertThat(advice.game().orElseThrow().interchangeable()).isTrue();
        assertThat(advice.ifStraight().gain()).isGreaterThan(0.05);
        assertThat(advice.ifStraight().sheet().pair(tiewright.event.RubberNo.of(1)))
                .contains(Pair.of("a5", "a6"));
        assertThat(advice.ifAsBefore().gain())
                .isBetween(0.0, advice.ifStraight().gain());
        // the draw against straight is the mean over the orders, which is the value
        assertThat(advice.ifStraight().worth() - advice.ifStraight().gain()).isCloseTo(0.5, within(1e-6));
    }

    /** Both clubs the same ladder of three pairs. */
    private static tiewright.rating.Strengths ladder() {
        java.util.Map<tiewright.event.PlayerId, tiewright.rating.Estimate> forms = new java.util.HashMap<>();
        double[] rungs = {5, 0, -5};
        for (int player = 1; player <= 6; player++) {
            for (String club : List.of("a", "b")) {
                forms.put(
                        tiewright.event.PlayerId.of(club + player),
                        tiewright.rating.Estimate.of(rungs[(player - 1) / 2], 0));
            }
        }
        return tiewright.rating.Rating.fit(new tiewright.rating.Prior(forms, java.util.Map.of()), List.of());
    }

    @Test
    void too_many_sheets_are_not_gone_into() {
        LineupProblem many = LineupProblem.of(
                Ties.rules(4), Ties.squad("a", 12), Ties.squad("b", 8), Ties.even(), LineupProblem.Against.UNKNOWN, 1);
        assertThat(BlindGame.of(many)).isEmpty();
        OrderAdvice advice = OrderAdvice.of(
                        many.wishing(Wish.mustRest(tiewright.event.PlayerId.of("a1"))), List.of(), 1)
                .orElseThrow();
        assertThat(advice.game()).isEmpty();
        assertThat(advice.drawn()).isEmpty();
    }

    /** Five of five against a coin: 2/32, the sign test's own example of too few. */
    @Test
    void five_of_five_could_be_chance_and_six_of_six_could_not() {
        assertThat(new Habit(5, 5).byChance()).isCloseTo(0.0625, within(1e-12));
        assertThat(new Habit(5, 5).couldBeChance()).isTrue();
        assertThat(new Habit(6, 6).byChance()).isCloseTo(0.03125, within(1e-12));
        assertThat(new Habit(6, 6).couldBeChance()).isFalse();
        assertThat(new Habit(0, 0).couldBeChance()).isTrue();
        assertThat(new Habit(0, 0).next()).isEqualTo(0.5);
        assertThat(new Habit(5, 5).next()).isCloseTo(6.0 / 7, within(1e-12));
        assertThatThrownBy(() -> new Habit(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** R package pwr and binom.test: of 100, a share of a half is rejected at 5 % from 61 up or 39 down. */
    @Test
    void the_exact_test_rejects_where_the_published_one_does() {
        assertThat(new Habit(61, 100).couldBeChance()).isFalse();
        assertThat(new Habit(60, 100).couldBeChance()).isTrue();
        assertThat(new Habit(39, 100).couldBeChance()).isFalse();
        assertThat(new Habit(40, 100).couldBeChance()).isTrue();
    }

    /** Clopper and Pearson's exact limits: none of n, 1 - (alpha/2)^(1/n), by hand. */
    @Test
    void the_share_has_its_exact_limits() {
        assertThat(new Habit(5, 5).low()).isCloseTo(Math.pow(0.025, 0.2), within(1e-9));
        assertThat(new Habit(5, 5).high()).isEqualTo(1);
        assertThat(new Habit(0, 5).high()).isCloseTo(1 - Math.pow(0.025, 0.2), within(1e-9));
    }

    @Test
    void straight_is_told_by_ranks() {
        Squad theirs = Ties.squad("b", 8);
        Sheet straight = Sheet.full(Pair.of("b1", "b2"), Pair.of("b3", "b4"), Pair.of("b5", "b6"));
        Sheet crossed = Sheet.full(Pair.of("b5", "b6"), Pair.of("b1", "b2"), Pair.of("b3", "b4"));
        Sheet alone = Sheet.of(List.of(Optional.of(Pair.of("b1", "b2")), Optional.empty()));
        assertThat(Habit.of(theirs, Ties.even(), List.of(straight, crossed, alone)))
                .isEqualTo(new Habit(1, 2));
    }
}
