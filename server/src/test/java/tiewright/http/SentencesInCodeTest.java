package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No class of the pages holds words of a language: what a page says in any state of the day stands in a bundle. This reads the
 * sources, as a walk through pages meets only the states that its day has. What goes to a log or into an exception may be English.
 */
class SentencesInCodeTest {
    private static final Path PAGES = Path.of("src", "main", "java", "tiewright", "http");
    private static final Pattern REMARK = Pattern.compile("/\\*.*?\\*/|(?m)(?<=^|\\s)//.*$", Pattern.DOTALL);
    private static final Pattern NOT_SHOWN = Pattern.compile(
            "LOG\\.|DOORS\\.|Exception\\(|new Thread|ByTheClock\\.timer|new Background|header\\(|hash\\(|matches\\(|Pattern");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern WORDS = Pattern.compile("[a-z]{2,} [a-z]{2,} |^[A-Z][a-z]+ [a-z]{2,}|^[A-Z][a-z]{2,}$"
            + "|^,? ?(and|or|of|to|v|from|by|at|in|with|a|no|the|is) $|^ (and|or|of|to|v|from|by|at|in)\\b");

    /** A word for a log line, and a password of a store that never leaves the memory. */
    private static final Set<String> NEVER_SHOWN = Set.of("an address without a page", "in memory only");

    @Test
    void words_are_told_from_codes() {
        assertThat(spoken("return winner + \" and \" + loser;")).containsExactly(" and ");
        assertThat(spoken("lines.add(\"Ends at \" + finish);")).containsExactly("Ends at ");
        assertThat(spoken("columns.add(new Column(\"Club\", false));")).containsExactly("Club");
        assertThat(spoken("visit.say(\"page-desk.who-is-told\", \"club\", name); LOG.warn(\"The disk is full\");"))
                .isEmpty();
    }

    @Test
    void no_sentence_stands_in_the_code_of_pages() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(PAGES)) {
            for (Path file : files.filter(SentencesInCodeTest::isOfAPage).toList()) {
                spoken(Files.readString(file))
                        .forEach(words -> found.add(PAGES.relativize(file) + " says \"" + words + "\""));
            }
        }
        assertThat(found).isEmpty();
    }

    /** Not the examples of pieces, which are an invented day, nor what the server says before any page is asked. */
    private static boolean isOfAPage(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".java") && !name.startsWith("Example") && !name.equals("BelowPages.java");
    }

    private static List<String> spoken(String source) {
        return Stream.of(REMARK.matcher(source).replaceAll("").split(";"))
                .filter(statement -> !NOT_SHOWN.matcher(statement).find())
                .flatMap(statement -> LITERAL.matcher(statement).results())
                .map(literal -> literal.group(1))
                .filter(words -> WORDS.matcher(words).find() && !NEVER_SHOWN.contains(words))
                .toList();
    }
}
