package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * When counting gives up. Six players of different ranks make a state of every even number of them: 1 + 15 + 15 + 1 = 2<sup>5</sup>
 * (the even binomial coefficients add up to a half of 2<sup>6</sup>).
 */
class SheetCounterTest {
    private static final List<Integer> SIX = List.of(1, 2, 3, 4, 5, 6);

    private static SheetCounter three(int mostStates) {
        return new SheetCounter(SIX, 1, 3, mostStates);
    }

    @Test
    void counts_with_just_as_many_states_as_it_may_keep() {
        assertThat(three(32).inAnyOrder()).contains(BigInteger.valueOf(90));
        assertThat(three(32).bySum()).contains(BigInteger.valueOf(24));
        assertThat(three(32).strongestFirst()).isPresent();
    }

    @Test
    void gives_up_with_one_state_more() {
        assertThat(three(31).inAnyOrder()).isEmpty();
        assertThat(three(31).bySum()).isEmpty();
        assertThat(three(31).strongestFirst()).isEmpty();
    }

    @Test
    void a_sheet_without_rubbers_is_one_sheet() {
        SheetCounter none = new SheetCounter(SIX, 1, 0, 1);
        assertThat(none.inAnyOrder()).contains(BigInteger.ONE);
        assertThat(none.bySum()).contains(BigInteger.ONE);
        assertThat(none.strongestFirst()).contains(BigInteger.ONE);
    }
}
