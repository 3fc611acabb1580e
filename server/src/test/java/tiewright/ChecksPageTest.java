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

/** Every test that docs/checks.md names is there. */
class ChecksPageTest {
    private static final Path PAGE = Path.of("..", "docs", "checks.md");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final Pattern TEST = Pattern.compile("((?:[a-z]+\\.)+[A-Z]\\w+)(?:\\.(\\w+))?");
    private static final Pattern METHOD = Pattern.compile("[a-zA-Z0-9]+(?:_\\w+)+");

    @Test
    void names_only_tests_that_exist() throws IOException {
        List<String> rows = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| "))
                .toList();
        int named = 0;
        for (String row : rows) {
            String[] cells = row.split(" \\| ");
            if (cells.length == 4) {
                named += check(cells[2]);
            }
        }
        assertThat(named).isGreaterThan(50);
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
            throw new AssertionError("docs/checks.md names " + name + ", which is not there", missing);
        }
    }

    private static List<String> methods(Class<?> test) {
        return Arrays.stream(test.getDeclaredMethods())
                .map(java.lang.reflect.Method::getName)
                .toList();
    }
}
