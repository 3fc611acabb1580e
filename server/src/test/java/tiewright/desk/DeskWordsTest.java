package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every code that the desk's classes hold has its sentence, and every sentence its code. */
class DeskWordsTest {
    /** A code as it lies in the constants of a class file; one that ends in a dot is completed by a field's name. */
    private static final Pattern CODE = Pattern.compile("(?<![a-zA-Z./])desk\\.[a-z][a-zA-Z.-]*");

    private static Set<String> codesInClasses() throws Exception {
        Path classes = Path.of(RecordCard.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (Stream<Path> files = Files.walk(classes.resolve("tiewright/desk"))) {
            return files.filter(file -> file.toString().endsWith(".class"))
                    .map(DeskWordsTest::bytes)
                    .flatMap(text -> CODE.matcher(text).results().map(MatchResult::group))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static String bytes(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> sentences() throws IOException {
        Properties sentences = new Properties();
        try (InputStream in = RecordCard.class.getResourceAsStream("/tiewright/wording/desk.properties")) {
            sentences.load(in);
        }
        return new TreeSet<>(sentences.stringPropertyNames());
    }

    @Test
    void every_code_has_a_sentence() throws Exception {
        Set<String> codes = codesInClasses();
        assertThat(codes).hasSizeGreaterThan(50);
        codes.removeIf(code -> code.endsWith("."));
        assertThat(sentences()).containsAll(codes);
    }

    @Test
    void every_sentence_has_a_code() throws Exception {
        Set<String> unused = sentences();
        unused.removeAll(codesInClasses());
        unused.removeIf(key -> key.startsWith("desk.text-missing.") || key.startsWith("desk.next."));
        assertThat(unused).isEmpty();
    }

    @Test
    void every_item_of_the_list_has_a_sentence() throws Exception {
        Set<String> items = Stream.of(DoNext.Kind.values())
                .map(kind -> "desk.next." + kind.code())
                .collect(Collectors.toSet());
        assertThat(sentences().stream().filter(key -> key.startsWith("desk.next.")))
                .containsExactlyInAnyOrderElementsOf(items);
    }

    @Test
    void sentences_are_plain() throws Exception {
        Properties sentences = new Properties();
        try (InputStream in = RecordCard.class.getResourceAsStream("/tiewright/wording/desk.properties")) {
            sentences.load(in);
        }
        assertThat(sentences.values()).extracting(Object::toString).noneMatch(text -> text.contains("!"));
    }
}
