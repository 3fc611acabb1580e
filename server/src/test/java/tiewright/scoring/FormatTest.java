package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.Seed;

class FormatTest {
    @Test
    void reads_every_ending() {
        assertThat(Format.parse("side-out-11")).contains(Format.sideOut(11));
        assertThat(Format.parse("rally-21-cap-30"))
                .contains(new Format(Format.Kind.RALLY, 21, false, OptionalInt.of(30), false));
        assertThat(Format.parse("rally-15-by-1"))
                .contains(new Format(Format.Kind.RALLY, 15, true, OptionalInt.empty(), false));
        assertThat(Format.parse("rally-11-serve-last"))
                .contains(new Format(Format.Kind.RALLY, 11, false, OptionalInt.empty(), true));
    }

    @Test
    void reads_endings_in_any_order_and_writes_them_in_one() {
        assertThat(Format.parse("rally-11-serve-last-cap-15").orElseThrow().code())
                .isEqualTo("rally-11-cap-15-serve-last");
    }

    @Test
    void every_format_reads_back_from_its_code() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 2000; i++) {
            Format format = RandomFormat.of(random, 99);
            assertThat(Format.parse(format.code())).as("%s", seed).contains(format);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "11",
                "side-out",
                "side-out-",
                "side-out-0",
                "side-out-011",
                "side-out-100",
                "rally--5",
                "Rally-11",
                "rally-11 ",
                " rally-11",
                "rally-21-cap-20",
                "rally-21-cap-200",
                "rally-21-cap",
                "rally-21-cap-",
                "rally-11-by-2",
                "rally-11-by-1-by-1",
                "rally-11-cap-15-cap-15",
                "rally-11-serve-last-serve-last",
                "sideout-11",
                "rally-11-",
                "rally-١١",
                "side-out-11\n"
            })
    void refuses_codes_that_are_not_ours(String code) {
        assertThat(Format.parse(code)).isEmpty();
    }

    @Test
    void refuses_bounds_that_make_no_game() {
        assertThatThrownBy(() -> Format.rally(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Format.rally(100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Format(Format.Kind.RALLY, 21, false, OptionalInt.of(20), false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Format.rally(99).code()).isEqualTo("rally-99");
        assertThat(new Format(Format.Kind.RALLY, 21, false, OptionalInt.of(21), false).code())
                .isEqualTo("rally-21-cap-21");
    }

    @Test
    void says_which_endings_change_nothing() {
        assertThat(Format.parse("side-out-11-serve-last").orElseThrow().idle())
                .containsExactly(Format.Ending.SERVE_LAST);
        assertThat(Format.parse("rally-21-cap-30-by-1").orElseThrow().idle()).containsExactly(Format.Ending.CAP);
        assertThat(Format.parse("rally-21-cap-30-serve-last").orElseThrow().idle())
                .isEmpty();
    }

    @Test
    void knows_the_points_that_win() {
        assertThat(Format.sideOut(11).winningScoreAgainst(9)).isEqualTo(11);
        assertThat(Format.sideOut(11).winningScoreAgainst(10)).isEqualTo(12);
        Format capped = Format.parse("rally-21-cap-30").orElseThrow();
        assertThat(capped.winningScoreAgainst(28)).isEqualTo(30);
        assertThat(capped.winningScoreAgainst(29)).isEqualTo(30);
        assertThatThrownBy(() -> capped.winningScoreAgainst(30)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Format.parse("rally-21-by-1").orElseThrow().winningScoreAgainst(20))
                .isEqualTo(21);
    }
}
