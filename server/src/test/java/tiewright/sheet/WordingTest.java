package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class WordingTest {
    private static Properties sentences() throws IOException {
        Properties sentences = new Properties();
        try (InputStream in = Why.class.getResourceAsStream("/tiewright/wording/sheet.properties")) {
            sentences.load(in);
        }
        return sentences;
    }

    @Test
    void every_reason_has_a_sentence_and_every_sentence_a_reason() throws IOException {
        assertThat(sentences().stringPropertyNames())
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Why.values()).map(Why::code).toList());
    }

    @Test
    void every_sentence_is_whole() throws IOException {
        assertThat(sentences().values())
                .allSatisfy(sentence ->
                        assertThat(sentence.toString()).matches("[A-Z{].*[.]").doesNotContain("!"));
    }
}
