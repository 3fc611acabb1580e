package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;

class SheetCountTest {
    private static Conditions conditions(int rubbers, String order, int most) {
        return Conditions.of(Preset.CLUB_DAY)
                .with(Setting.RUBBERS, String.valueOf(rubbers))
                .with(Setting.ORDER_OF_STRENGTH, order)
                .with(Setting.MAX_RUBBERS_PER_PLAYER, String.valueOf(most));
    }

    private static List<OptionalInt> ranked(int players) {
        return IntStream.rangeClosed(1, players).mapToObj(OptionalInt::of).toList();
    }

    /** Perfect matchings (2n-1)!!, On-Line Encyclopedia of Integer Sequences A001147, times the n! orders of the pairs. */
    @ParameterizedTest
    @CsvSource({"2,1,1", "4,2,3", "6,3,15", "8,4,105", "10,5,945"})
    void a_full_squad_has_its_matchings_in_every_order(int players, int rubbers, long matchings) {
        long orders = LongStream.rangeClosed(1, rubbers).reduce(1, (a, b) -> a * b);
        assertThat(SheetCount.of(ranked(players), conditions(rubbers, "none", 1)))
                .isEqualTo(new SheetCount(matchings * orders, matchings * orders));
    }

    /** All: multinomials, 8!/2!^4 and so on. Legal: counted once more in another language by going through them all. */
    @ParameterizedTest
    @CsvSource({"8,4,2520,199", "8,3,2520,568", "6,3,90,24"})
    void an_order_of_strength_leaves_few(int players, int rubbers, long all, long legal) {
        assertThat(SheetCount.of(ranked(players), conditions(rubbers, "rank-sum", 1)))
                .isEqualTo(new SheetCount(legal, all));
    }

    @Test
    void a_short_squad_fills_what_it_can() {
        assertThat(SheetCount.of(ranked(6), conditions(4, "none", 1)).all()).isEqualTo(90);
        assertThat(SheetCount.of(ranked(7), conditions(4, "none", 1)).all()).isEqualTo(630);
    }

    @Test
    void a_player_may_play_twice_where_the_conditions_say_so() {
        // three players: 12, 13 and 23 in any order
        assertThat(SheetCount.of(ranked(3), conditions(3, "none", 2)).all()).isEqualTo(6);
    }

    @Test
    void an_order_of_strength_needs_every_rank() {
        List<OptionalInt> gap = List.of(OptionalInt.of(1), OptionalInt.empty());
        assertThatThrownBy(() -> SheetCount.of(gap, conditions(1, "rank-sum", 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
