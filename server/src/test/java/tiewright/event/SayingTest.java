package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.Seed;

class SayingTest {
    private static final String SIGNS = "ab\\{}[]=;, \n'é";

    @Test
    void reads_back_what_it_writes() {
        for (int round = 0; round < 3_000; round++) {
            Saying saying = saying(Seed.random(round), 3);
            assertThat(Saying.ofText(saying.text())).as(Seed.rerun(round)).isEqualTo(saying);
        }
    }

    private static Saying saying(Random random, int depth) {
        Saying saying = Saying.of(text(random));
        for (int i = random.nextInt(3); i > 0; i--) {
            saying = saying.with("f" + text(random), text(random));
        }
        for (int i = depth == 0 ? 0 : random.nextInt(3); i > 0; i--) {
            List<Saying> inside = IntStream.range(0, random.nextInt(3))
                    .mapToObj(any -> saying(random, depth - 1))
                    .toList();
            saying = saying.with("p" + text(random), inside);
        }
        return saying;
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(5); i > 0; i--) {
            text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return text.toString();
    }

    @Test
    void stands_in_a_column_as_a_person_can_read_it() {
        Saying time = Saying.of("notices.time").with("start", "10:20").with("court", 3);
        assertThat(time.text()).isEqualTo("notices.time{court=3;start=10:20}");
        assertThat(Saying.of("a").with("b", time).withEach("c", List.of("x=y")).text())
                .isEqualTo("a{b=[notices.time{court=3;start=10:20}];c=[typed{words=x\\=y}]}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a", "a{", "a{b}", "a{b=c", "a{b=c}d", "a{b=[c]}", "a{b=[c{}}", "a\\"})
    void reads_nothing_else(String text) {
        assertThatThrownBy(() -> Saying.ofText(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void typed_words_are_their_own() {
        assertThat(Saying.typed("rain").words()).isEqualTo("rain");
        assertThat(Saying.of("notices.tie").with("words", "x").words()).isEmpty();
        assertThat(Saying.typed("").isEmpty()).isTrue();
        assertThat(Saying.of("notices.tie").isEmpty()).isFalse();
    }
}
