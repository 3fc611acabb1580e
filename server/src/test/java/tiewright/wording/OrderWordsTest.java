package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.Seed;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.lineup.Aim;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.lineup.order.BlindGame;
import tiewright.lineup.order.BlindGame.Weighted;
import tiewright.lineup.order.Habit;
import tiewright.lineup.order.OrderAdvice;

class OrderWordsTest {
    private static final String CAN_BE_READ = "a sheet that is always the same can be read";
    private static final String NO_DRAW = "One sheet is best whatever they name";
    private static final Sheet ONE = Sheet.full(Pair.of("a1", "a2"), Pair.of("a3", "a4"));
    private static final Sheet OTHER = Sheet.full(Pair.of("a3", "a4"), Pair.of("a1", "a2"));

    private static String said(OrderAdvice advice) {
        return String.join(" ", new OrderWords(Words.ofCodes(ZoneOffset.UTC)).said(advice, Aim.Kind.WIN, 1));
    }

    private static String said(List<Weighted> mix) {
        BlindGame game = new BlindGame(0.5, 0, false, mix, mix, 2, 2);
        OrderAdvice.Reply reply = new OrderAdvice.Reply(ONE, 0.6, 0.1);
        return said(new OrderAdvice(Optional.of(game), Optional.of(ONE), new Habit(0, 0), reply, reply));
    }

    @Test
    void one_sheet_that_is_best_whatever_they_name_is_never_said_to_be_readable() {
        assertThat(said(List.of(new Weighted(ONE, 1))))
                .contains(NO_DRAW)
                .doesNotContain(CAN_BE_READ)
                .doesNotContain("100");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 0.9994, 0.9996, 0.99996, 0.9999999})
    void a_draw_that_hardly_ever_names_another_sheet_has_no_chance_of_all_or_nothing(double often) {
        String said = said(List.of(new Weighted(ONE, often), new Weighted(OTHER, 1 - often)));
        assertThat(said)
                .contains(CAN_BE_READ)
                .doesNotContain(NO_DRAW)
                .doesNotContainPattern("chance of 100(\\.0+)? %")
                .doesNotContainPattern("chance of 0(\\.0+)? %");
    }

    /** Where the order counts one sheet is either best or drawn: never the one beside the sentence of the other. */
    @Test
    void whatever_the_tie_no_fixed_order_is_named_for_sure_beside_the_warning() {
        int best = 0;
        int drawn = 0;
        for (int round = 0; round < 24; round++) {
            Random random = Seed.random(round);
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(2, OrderOfStrength.RANK_SUM),
                    Ties.squad("a", 4),
                    Ties.squad("b", 4),
                    Ties.random(random, 4),
                    LineupProblem.Against.UNKNOWN,
                    1);
            String said = said(OrderAdvice.of(problem, List.of(), round).orElseThrow());
            assertThat(said.contains(CAN_BE_READ)).as(Seed.rerun(round)).isNotEqualTo(said.contains(NO_DRAW));
            assertThat(said).as(Seed.rerun(round)).doesNotContainPattern("chance of (100|0)(\\.0+)? %");
            best += said.contains(NO_DRAW) ? 1 : 0;
            drawn += said.contains(CAN_BE_READ) ? 1 : 0;
        }
        assertThat(best).as("ties with one best sheet").isPositive();
        assertThat(drawn).as("ties with a draw").isPositive();
    }
}
