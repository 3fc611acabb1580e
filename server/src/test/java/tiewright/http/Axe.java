package tiewright.http;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.openqa.selenium.JavascriptExecutor;

/**
 * What axe finds wrong on a page: every WCAG 2.2 rule it knows, AAA contrast included. A page without frames is asked in one step,
 * and what passes is not described place by place: less than half of the time that axe's own driver takes.
 */
public final class Axe {
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
    private static final String SCRIPT = script();

    private Axe() {}

    /** A line for each element at fault: the rule, what it wants, the element. A failure of axe itself is a line too. */
    public static List<String> faults(JavascriptExecutor browser) {
        browser.executeScript(SCRIPT);
        Object found = browser.executeAsyncScript("""
                const answer = arguments[1];
                const options = {runOnly: {type: 'tag', values: arguments[0]}, resultTypes: ['violations']};
                axe.run(document, options).then(
                  (results) => answer(results.violations.flatMap((rule) =>
                    rule.nodes.map((node) => `${rule.id}: ${rule.help}: ${node.html}`))),
                  (failure) => answer([String(failure)]))""", RULES);
        return ((List<?>) found).stream().map(String.class::cast).toList();
    }

    private static String script() {
        try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
