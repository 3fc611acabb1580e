package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is one of a few, as files, forms and the ledger write it: our own codes, no source. */
class WrittenCodesTest {
    private static <E> void check(
            E[] all, Function<E, String> code, Function<String, Optional<E>> parse, String codes) {
        assertThat(Arrays.stream(all).map(code)).containsExactly(codes.split(" "));
        assertThat(Arrays.stream(all).map(code).map(parse))
                .isEqualTo(Arrays.stream(all).map(Optional::of).toList());
        assertThat(parse.apply("")).isEmpty();
        assertThat(parse.apply(codes.split(" ")[0] + "x")).isEmpty();
    }

    @Test
    void each_is_read_as_it_is_written_and_nothing_else_is() {
        check(Role.values(), Role::code, Role::parse, "public player captain volunteer desk organiser referee");
        check(Stage.values(), Stage::code, Stage::parse, "pool knockout placing");
        check(SheetKind.values(), SheetKind::code, SheetKind::parse, "rubbers decider");
        check(NamesKept.values(), NamesKept::code, NamesKept::parse, "codes initials");
        check(Penalty.values(), Penalty::code, Penalty::parse, "let-stand rubbers-lost tie-lost");
        check(
                CorrectionChoice.values(),
                CorrectionChoice::code,
                CorrectionChoice::parse,
                "let-stand replay record-only");
        check(How.values(), How::code, How::parse, "played retired-home retired-away walkover-home walkover-away void");
    }

    @Test
    void a_side_is_home_or_away() {
        assertThat(List.of(Side.of("home"), Side.of("away"))).containsExactly(Side.values());
        assertThat(List.of(Side.HOME.code(), Side.AWAY.code())).containsExactly("home", "away");
        assertThat(List.of(Side.HOME.other(), Side.AWAY.other())).containsExactly(Side.AWAY, Side.HOME);
        assertThatThrownBy(() -> Side.of("guest")).hasMessage("a side is home or away, not \"guest\"");
    }

    @Test
    void a_kind_of_fact_is_called_like_its_table() {
        for (FactKind kind : FactKind.values()) {
            assertThat(FactKind.of(kind.code())).isEqualTo(kind);
        }
        assertThat(FactKind.SHEETS_OPENED.code()).isEqualTo("sheets_opened");
        assertThatThrownBy(() -> FactKind.of("SHEETS_OPENED")).hasMessage("no fact is of the kind SHEETS_OPENED");
    }

    @Test
    void some_roles_belong_to_a_club_and_others_run_the_event() {
        assertThat(Arrays.stream(Role.values()).filter(Role::isOfAClub)).containsExactly(Role.PLAYER, Role.CAPTAIN);
        assertThat(Arrays.stream(Role.values()).filter(Role::isOfficial))
                .containsExactly(Role.DESK, Role.ORGANISER, Role.REFEREE);
    }

    @Test
    void a_rubber_is_a_number_or_the_decider_which_comes_last() {
        assertThat(RubberNo.upTo(3)).extracting(RubberNo::toString).containsExactly("1", "2", "3");
        assertThat(RubberNo.upTo(0)).isEmpty();
        assertThat(RubberNo.parse("D")).contains(RubberNo.DECIDER);
        assertThat(RubberNo.DECIDER).hasToString("D");
        assertThat(List.of("1", "9", "10", "99").stream().map(RubberNo::parse))
                .isEqualTo(List.of(1, 9, 10, 99).stream()
                        .map(RubberNo::of)
                        .map(Optional::of)
                        .toList());
        assertThat(RubberNo.DECIDER.isDecider()).isTrue();
        assertThat(RubberNo.of(1).isDecider()).isFalse();
        assertThat(RubberNo.of(99)).isLessThan(RubberNo.DECIDER);
        assertThat(RubberNo.DECIDER).isGreaterThan(RubberNo.of(99)).isEqualByComparingTo(RubberNo.DECIDER);
        assertThat(RubberNo.of(2)).isGreaterThan(RubberNo.of(1)).isLessThan(RubberNo.of(10));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "01", "100", "-1", "d", "1 ", "1D"})
    void nothing_else_is_a_rubber(String text) {
        assertThat(RubberNo.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 100})
    void no_rubber_has_another_number(int number) {
        assertThatThrownBy(() -> RubberNo.of(number)).hasMessage("no rubber has the number " + number);
    }

    @Test
    void an_ending_says_who_is_missing() {
        assertThat(Arrays.stream(How.values()).filter(How::isWalkover))
                .containsExactly(How.WALKOVER_HOME, How.WALKOVER_AWAY);
        assertThat(Arrays.stream(How.values()).filter(How::isRetirement))
                .containsExactly(How.RETIRED_HOME, How.RETIRED_AWAY);
        assertThat(Arrays.stream(How.values()).map(How::missing))
                .containsExactly(
                        Optional.empty(),
                        Optional.of(Side.HOME),
                        Optional.of(Side.AWAY),
                        Optional.of(Side.HOME),
                        Optional.of(Side.AWAY),
                        Optional.empty());
    }
}
