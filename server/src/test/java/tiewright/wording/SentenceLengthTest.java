package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A sentence that people read has at most twenty words. Our own aim, no source. A fact counts as one word; what a colon or a
 * semicolon parts counts as two sentences. So it is in the pages of docs that users read.
 */
class SentenceLengthTest {
    private static final int MOST = 20;
    private static final Path BUNDLES = Path.of("src/main/resources/tiewright/wording");
    private static final Pattern INNERMOST = Pattern.compile("\\{[^{}]*}");
    private static final Pattern ENDS = Pattern.compile("(?<=[.?:;])\\s+");

    /** No sentences: lists of the forms that a number or a place may take. */
    private static final Set<String> FORMS = Set.of("page-visit.ordinal", "notices.place-of-pool");

    private static int longest(String pattern) {
        String flat = pattern;
        while (INNERMOST.matcher(flat).find()) {
            flat = INNERMOST.matcher(flat).replaceAll("x");
        }
        return Stream.of(ENDS.split(flat))
                .mapToInt(sentence -> sentence.strip().split("\\s+").length)
                .max()
                .orElse(0);
    }

    private static Properties read(Path file) {
        Properties sentences = new Properties();
        try (var in = Files.newBufferedReader(file)) {
            sentences.load(in);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return sentences;
    }

    @Test
    void no_sentence_of_a_bundle_is_longer_than_twenty_words() throws IOException {
        Map<String, Integer> tooLong = new TreeMap<>();
        try (Stream<Path> files = Files.list(BUNDLES)) {
            files.filter(file -> file.toString().endsWith(".properties"))
                    .forEach(file -> read(file).forEach((key, sentence) -> {
                        int words = longest(sentence.toString());
                        if (words > MOST && !FORMS.contains(key.toString())) {
                            tooLong.put(key.toString(), words);
                        }
                    }));
        }
        assertThat(tooLong).as("make two sentences of each").isEmpty();
    }

    /** Not in tables, code and addresses; a list's entry is a paragraph. */
    private static Stream<String> paragraphs(String page) {
        String prose = Stream.of(page.replaceAll("(?s)```.*?```", "").split("\n"))
                .filter(line -> !line.startsWith("    ") && !line.startsWith("|"))
                .collect(Collectors.joining("\n"));
        return Stream.of(prose.split("\\n\\s*\\n|\\n(?=\\s*[-#*] |\\s*\\d+\\. )"))
                .map(text -> text.replaceAll("\\]\\([^)]*\\)", "]")
                        .replaceAll("`[^`]*`", "x")
                        .replace("*", ""));
    }

    private static int words(String sentence) {
        return (int) Stream.of(sentence.split("\\s+"))
                .filter(word -> word.matches(".*[\\p{L}\\p{N}].*"))
                .count();
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "docs/running-a-day.md", "docs/changes.md", "docs/models.md"})
    void no_sentence_of_a_page_of_docs_is_longer_than_twenty_words(String page) throws IOException {
        assertThat(paragraphs(Files.readString(Path.of("..").resolve(page)))
                        .flatMap(text -> Stream.of(ENDS.split(text.strip())))
                        .filter(sentence -> words(sentence) > MOST))
                .as("make two sentences of each")
                .isEmpty();
    }

    @Test
    void a_sentence_of_docs_is_counted_without_its_addresses_and_code() {
        assertThat(paragraphs("# A head\n\none [two](three four)\n| five |\n    six\n- seven `eight nine`: ten"))
                .extracting(SentenceLengthTest::words)
                .containsExactly(2, 2, 3);
    }

    @Test
    void words_are_counted_as_a_reader_counts_them() {
        assertThat(longest("One two three. Four {five, plural, one {# six} other {# seven}} eight nine"))
                .isEqualTo(4);
        assertThat(longest("a: b; c? d")).isEqualTo(1);
    }
}
