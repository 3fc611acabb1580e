package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why a card was changed, and by which ruling, also as older versions wrote it down. */
class BecauseTest {
    private static final TieId A1 = TieId.of("A1");
    private static final RubberNo ONE = RubberNo.of(1);

    private static Because corrected(String reason) {
        return new PlayFact.CardCorrected(A1, ONE, List.of(), How.VOID, reason).because();
    }

    @Test
    void words_and_number_stand_apart() {
        Because because = new PlayFact.CardTakenBack(A1, ONE, "wrong court, ruling 2", OptionalInt.of(4)).because();
        assertThat(because).isEqualTo(new Because("wrong court, ruling 2", OptionalInt.of(4)));
        assertThat(because.isEmpty()).isFalse();
    }

    @Test
    void an_older_row_ends_with_the_number() {
        assertThat(corrected("Misread, ruling 3")).isEqualTo(new Because("Misread", OptionalInt.of(3)));
        assertThat(new PlayFact.CardTakenBack(A1, ONE, "a, ruling 1, ruling 123456").because())
                .isEqualTo(new Because("a, ruling 1", OptionalInt.of(123456)));
        assertThat(corrected("two\nlines, ruling 1").ruling()).hasValue(1);
    }

    @Test
    void an_older_row_of_a_penalty_has_the_number_alone() {
        assertThat(corrected("ruling 9")).isEqualTo(new Because("", OptionalInt.of(9)));
        assertThat(corrected("ruling 9").isEmpty()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "misread", "by ruling 1 of last year", "overruling 3", "ruling 1234567", "as in ruling 2"})
    void what_else_was_typed_stays_as_it_was_typed(String typed) {
        assertThat(corrected(typed)).isEqualTo(new Because(typed, OptionalInt.empty()));
        assertThat(corrected(typed).isEmpty()).isEqualTo(typed.isEmpty());
    }
}
