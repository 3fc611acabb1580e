package tiewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The page on security answers each requirement of the OWASP ASVS 5.0.0 up to level 2 once (253 of them by its published list) and names
 * tests that are there.
 */
class SecurityPageTest {
    private static final int REQUIREMENTS = 253;
    private static final Pattern NUMBER = Pattern.compile("V\\d+\\.\\d+\\.\\d+");
    private static final Pattern TEST = Pattern.compile("\\b[A-Z]\\w+(?:Test|IT)\\b");

    private static List<String[]> rows() throws IOException {
        return Files.readAllLines(Path.of("..", "docs", "security.md")).stream()
                .filter(line -> line.startsWith("| V"))
                .map(line -> line.split("\\|"))
                .toList();
    }

    @Test
    void every_requirement_is_answered_once() throws IOException {
        List<String> numbers = rows().stream()
                .flatMap(row -> NUMBER.matcher(row[1]).results().map(MatchResult::group))
                .toList();
        assertThat(numbers).doesNotHaveDuplicates().hasSize(REQUIREMENTS);
        assertThat(rows()).allSatisfy(row -> assertThat(row[2]).isNotBlank());
    }

    @Test
    void every_test_named_on_it_is_there_and_what_is_met_names_one() throws IOException {
        List<String> there;
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            there = files.map(file -> file.getFileName().toString().replace(".java", ""))
                    .toList();
        }
        String page = Files.readString(Path.of("..", "docs", "security.md"));
        assertThat(TEST.matcher(page).results().map(MatchResult::group).distinct())
                .isSubsetOf(there);
        String met = page.substring(page.indexOf("## Met"), page.indexOf("## Not met"));
        assertThat(met.lines().filter(line -> line.startsWith("| V")))
                .allSatisfy(row -> assertThat(row).containsPattern(TEST));
    }
}
