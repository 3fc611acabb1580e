package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every key that a page or a template uses has its sentence, and every sentence of the pages is used. */
class PageSentencesTest {
    private static final Pattern KEY =
            Pattern.compile("\"((?:frame|pages|pieces|page-[a-z]+)\\.[A-Za-z0-9.-]*[A-Za-z0-9])\"");
    private static final Pattern BEGUN = Pattern.compile("\"((?:frame|page-[a-z]+)\\.[A-Za-z0-9.-]*[.-])\"");
    private static final List<Path> SOURCES =
            List.of(Path.of("src/main/java/tiewright/http"), Path.of("../web/templates"));

    private static Set<String> found(Pattern pattern) throws IOException {
        Set<String> keys = new TreeSet<>();
        for (Path root : SOURCES) {
            List<Path> files;
            try (Stream<Path> all = Files.walk(root)) {
                files = all.filter(Files::isRegularFile).toList();
            }
            for (Path file : files) {
                String text = Files.readString(file, StandardCharsets.UTF_8);
                pattern.matcher(text)
                        .results()
                        .map((MatchResult key) -> key.group(1))
                        .forEach(keys::add);
            }
        }
        return keys;
    }

    private static Set<String> sentences() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of("src/main/resources/tiewright/wording"))) {
            files = all.filter(
                            file -> file.getFileName().toString().matches("(frame|pages|pieces|page-.*)\\.properties"))
                    .toList();
        }
        Set<String> keys = new TreeSet<>();
        for (Path file : files) {
            Properties read = new Properties();
            try (Reader text = Files.newBufferedReader(file)) {
                read.load(text);
            }
            keys.addAll(read.stringPropertyNames());
        }
        return keys;
    }

    @Test
    void every_key_has_a_sentence() throws IOException {
        assertThat(sentences()).containsAll(found(KEY));
    }

    @Test
    void every_sentence_is_used() throws IOException {
        List<String> unused = new ArrayList<>(sentences());
        unused.removeAll(found(KEY));
        Set<String> begun = found(BEGUN);
        unused.removeIf(key -> begun.stream().anyMatch(key::startsWith));
        assertThat(unused).isEmpty();
    }

    /** A later line of the same key would silently take the place of the earlier sentence. */
    @Test
    void no_key_stands_twice_in_a_bundle() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("src/main/resources/tiewright/wording"))) {
            for (Path file :
                    all.filter(each -> each.toString().endsWith(".properties")).toList()) {
                List<String> keys = Files.readAllLines(file).stream()
                        .filter(line -> line.matches("[a-z][A-Za-z0-9.-]*\\s*=.*"))
                        .map(line -> line.replaceAll("\\s*=.*", ""))
                        .toList();
                assertThat(keys).as(file.getFileName().toString()).doesNotHaveDuplicates();
            }
        }
    }
}
