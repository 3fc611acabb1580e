package tiewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every test that docs/checks.md and docs/promises.md name is there. */
class ChecksPageTest {
    private static final Path CHECKS = Path.of("..", "docs", "checks.md");
    private static final Path PROMISES = Path.of("..", "docs", "promises.md");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final Pattern TEST = Pattern.compile("((?:[a-z]+\\.)+[A-Z]\\w+)(?:\\.(\\w+))?");
    private static final Pattern METHOD = Pattern.compile("[a-zA-Z0-9]+(?:_\\w+)+");

    @Test
    void names_only_tests_that_exist() throws IOException {
        assertThat(named(CHECKS, 4, 2)).isGreaterThan(50);
    }

    @Test
    void what_once_went_wrong_has_tests_that_exist() throws IOException {
        assertThat(named(PROMISES, 2, 1)).isGreaterThan(50);
    }

    /** How many tests the rows of so many cells name in this one. */
    private static int named(Path page, int cellsOfARow, int cell) throws IOException {
        List<String> rows = Files.readAllLines(page).stream()
                .filter(line -> line.startsWith("| "))
                .toList();
        int named = 0;
        for (String row : rows) {
            String[] cells = row.split(" \\| ");
            if (cells.length == cellsOfARow) {
                named += check(cells[cell]);
            }
        }
        return named;
    }

    private static int check(String where) {
        Optional<Class<?>> last = Optional.empty();
        int named = 0;
        Matcher quoted = QUOTED.matcher(where);
        while (quoted.find()) {
            String name = quoted.group(1);
            Matcher test = TEST.matcher(name);
            if (test.matches()) {
                last = Optional.of(load("tiewright." + test.group(1)));
                Optional.ofNullable(test.group(2))
                        .ifPresent(method -> assertThat(methods(load("tiewright." + test.group(1))))
                                .contains(method));
                named++;
            } else if (METHOD.matcher(name).matches()) {
                assertThat(methods(last.orElseThrow())).as(where).contains(name);
                named++;
            }
        }
        return named;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, ChecksPageTest.class.getClassLoader());
        } catch (ClassNotFoundException missing) {
            throw new AssertionError("a page of docs names " + name + ", which is not there", missing);
        }
    }

    private static List<String> methods(Class<?> test) {
        return Arrays.stream(test.getDeclaredMethods())
                .map(java.lang.reflect.Method::getName)
                .toList();
    }
}
