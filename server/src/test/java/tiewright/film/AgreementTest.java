package tiewright.film;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.film.Played.A1;
import static tiewright.film.Played.A2;
import static tiewright.film.Played.B1;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.scoring.Format;

class AgreementTest {
    private static FilmGame game(List<RallyNote> rallies) {
        return new FilmGame(
                "g", Optional.empty(), Optional.empty(), Played.start(Format.rally(99)), Optional.empty(), rallies);
    }

    private static Detail third(String third) {
        return new Detail(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(third),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Agreement.Field field(Agreement agreement, Agreement.What what) {
        return agreement.fields().stream()
                .filter(one -> one.what() == what)
                .findFirst()
                .orElseThrow();
    }

    /** J. Cohen, Psychological Bulletin 70:213 (1968), the example of three diagnoses, in the documentation of the R package psych: kappa .492. */
    @Test
    void kappa_of_the_published_table() {
        int[][] table = {{44, 7, 9}, {5, 20, 5}, {1, 3, 6}};
        List<String> one = new ArrayList<>();
        List<String> other = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                one.addAll(Collections.nCopies(table[row][column], "d" + row));
                other.addAll(Collections.nCopies(table[row][column], "d" + column));
            }
        }
        Kappa kappa = Kappa.of(one, other);
        assertThat(kappa.same()).isEqualTo(70);
        assertThat(kappa.of()).isEqualTo(100);
        assertThat(kappa.value().orElseThrow()).isCloseTo(.491525, Offset.offset(5e-7));
        assertThat(Kappa.of(other, one)).as("whoever is named first").isEqualTo(kappa);
    }

    @Test
    void one_word_only_or_nothing_gives_no_kappa() {
        assertThat(Kappa.of(List.of("a", "a"), List.of("a", "a")).value()).isEqualTo(OptionalDouble.empty());
        assertThat(Kappa.of(List.of(), List.of()).value()).isEqualTo(OptionalDouble.empty());
        assertThat(Kappa.of(List.of("a", "b"), List.of("b", "a")).value()).hasValue(-1);
    }

    @Test
    void each_field_is_held_against_the_same_field_of_the_same_rally() {
        FilmGame one = game(List.of(
                RallyNote.of(1, Ending.EARNED, A1).with(third("soft")),
                RallyNote.of(2, Ending.GAVE, A2),
                RallyNote.of(3, Ending.REPLAY)));
        FilmGame other = game(List.of(
                RallyNote.of(1, Ending.FORCED, B1).with(third("soft")),
                RallyNote.of(2, Ending.GAVE, A2).with(third("hard")),
                RallyNote.of(3, Ending.REPLAY),
                RallyNote.of(4, Ending.REPLAY)));
        Agreement agreement = Agreement.of(one, other);
        assertThat(agreement.rallies()).isEqualTo(3);
        assertThat(agreement.onlyOne()).isEqualTo(1);
        assertThat(field(agreement, Agreement.What.WINNER).kappa().same())
                .as("a winner of A1 or an error of B1: the same side won")
                .isEqualTo(2);
        assertThat(field(agreement, Agreement.What.ENDING).kappa())
                .extracting(Kappa::same, Kappa::of)
                .containsExactly(2, 3);
        assertThat(field(agreement, Agreement.What.PLAYER).kappa())
                .extracting(Kappa::same, Kappa::of)
                .containsExactly(1, 2);
        assertThat(field(agreement, Agreement.What.THIRD).onlyOne()).isEqualTo(1);
        assertThat(agreement.fields())
                .extracting(Agreement.Field::what)
                .doesNotContain(Agreement.What.SERVE, Agreement.What.SIGNAL);
    }

    @Test
    void the_other_may_have_named_the_sides_the_other_way_round() {
        Start turned = new Start(Format.rally(99), A1, B1, Played.B2, A1, A2);
        List<RallyNote> rallies = List.of(RallyNote.of(1, Ending.EARNED, A1), RallyNote.of(2, Ending.EARNED, B1));
        FilmGame other = new FilmGame("h", Optional.empty(), Optional.empty(), turned, Optional.empty(), rallies);
        assertThat(field(Agreement.of(game(rallies), other), Agreement.What.WINNER)
                        .kappa()
                        .same())
                .isEqualTo(2);
    }

    /** Two who say words blindly agree no better than luck: kappa is about 0 whatever the words' shares are. */
    @Test
    void blind_watchers_have_a_kappa_of_about_nothing() {
        Random random = Seed.random(0);
        List<String> one = IntStream.range(0, 20_000)
                .mapToObj(i -> random.nextInt(10) < 7 ? "earned" : "gave")
                .toList();
        List<String> other = IntStream.range(0, 20_000)
                .mapToObj(i -> random.nextInt(10) < 4 ? "earned" : "gave")
                .toList();
        assertThat(Kappa.of(one, other).value().orElseThrow()).as(Seed.rerun(0)).isBetween(-0.05, 0.05);
    }
}
