package tiewright.http.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sentence with a command in it, in parts. Our own rule, no source. */
class SaidTest {
    @Test
    void words_of_a_command_that_have_a_hyphen_are_whole_and_others_may_part() {
        assertThat(Said.parts("Start: serve --data my-event, once more."))
                .filteredOn(Said::whole)
                .extracting(Said::text)
                .containsExactly("--data", "my-event,");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A well-kept day.", "Start  it with --copies  and a folder.", " --host "})
    void the_parts_are_the_sentence_again(String sentence) {
        assertThat(Said.parts(sentence).stream().map(Said::text).collect(Collectors.joining()))
                .isEqualTo(sentence);
    }

    @Test
    void a_sentence_without_a_command_is_one_part() {
        assertThat(Said.parts("A well-kept day.")).containsExactly(new Said("A well-kept day.", false));
    }
}
