package tiewright.http.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the stylesheet and the other public files promise: contrast, weight, nothing fetched from outside.
 *
 * <p>Contrast by the definitions of relative luminance and contrast ratio in the Web Content Accessibility Guidelines
 * (WCAG) 2.2; the 7:1 is its success criterion 1.4.6, the 3:1 of borders and focus its 1.4.11.
 */
class StylesheetTest {

    private static final Path WEB = Path.of("..", "web");
    private static final Pattern TOKEN = Pattern.compile("--(\\w+): (#[0-9A-Fa-f]{6});([^\\n]*)");
    private static final Pattern CLAIM = Pattern.compile("(\\d+\\.\\d) on --(\\w+)");

    private static final int OF_EVERYBODY = 100_000;
    private static final int OF_A_ROLE = 10_000;

    private final String everybodys = read(WEB.resolve("static/tiewright.css"));
    private final String print = read(WEB.resolve("static/print.css"));
    private final String css = everybodys
            + read(WEB.resolve("static/captain.css"))
            + read(WEB.resolve("static/desk.css"))
            + read(WEB.resolve("static/cards.css"))
            + print;
    private final String screen =
            everybodys.substring(everybodys.indexOf(":root"), everybodys.indexOf("}", everybodys.indexOf(":root")));

    /** Grey #767676 on white is the well-known 4.54:1; black on white is 21:1 by definition. */
    @Test
    void computes_contrast_as_WCAG_does() {
        assertThat(contrast("#767676", "#FFFFFF")).isCloseTo(4.5422, within(0.0001));
        assertThat(contrast("#595959", "#FFFFFF")).isCloseTo(7.0047, within(0.0001));
        assertThat(contrast("#5a5a5a", "#FFFFFF")).isCloseTo(6.8969, within(0.0001));
        assertThat(contrast("#000000", "#FFFFFF")).isEqualTo(21.0);
        assertThat(contrast("#FFFFFF", "#000000")).isEqualTo(21.0);
    }

    @Test
    void every_text_reaches_seven_to_one_on_everything_it_stands_on() {
        Map<String, String> token = tokens(screen);
        for (String text : List.of("ink", "quiet", "do", "sealed", "stop")) {
            for (String ground : List.of("paper", "white", "band", "held")) {
                assertThat(contrast(token.get(text), token.get(ground)))
                        .as(text + " on " + ground)
                        .isGreaterThanOrEqualTo(7.0);
            }
        }
        for (String ground : List.of("do", "sealed", "ink")) {
            assertThat(contrast(token.get("white"), token.get(ground)))
                    .as("white on " + ground)
                    .isGreaterThanOrEqualTo(7.0);
        }
    }

    @Test
    void borders_and_the_focus_ring_reach_three_to_one() {
        Map<String, String> token = tokens(screen);
        assertThat(contrast(token.get("edge"), token.get("paper"))).isGreaterThanOrEqualTo(3.0);
        assertThat(contrast(token.get("edge"), token.get("white"))).isGreaterThanOrEqualTo(3.0);
        for (String ground : List.of("paper", "white", "band", "held")) {
            assertThat(contrast(token.get("focus"), token.get(ground)))
                    .as("focus on " + ground)
                    .isGreaterThanOrEqualTo(3.0);
        }
    }

    @Test
    void paper_is_printed_black_on_white() {
        Map<String, String> token = tokens(print);
        for (String text : List.of("ink", "quiet", "do", "sealed", "stop")) {
            assertThat(contrast(token.get(text), token.get("paper"))).as(text).isGreaterThanOrEqualTo(7.0);
        }
    }

    @Test
    void the_figures_beside_the_colours_are_true() {
        Map<String, String> token = tokens(screen);
        int claims = 0;
        var lines = TOKEN.matcher(screen);
        while (lines.find()) {
            var claim = CLAIM.matcher(lines.group(3));
            while (claim.find()) {
                double figure = contrast(lines.group(2), token.get(claim.group(2)));
                assertThat(Double.parseDouble(claim.group(1)))
                        .as(lines.group(1) + " on " + claim.group(2))
                        .isCloseTo(figure, within(0.0501));
                claims++;
            }
        }
        assertThat(claims).isGreaterThan(20);
    }

    /** Buttons say how they are shown, which is stronger than the browser's own rule for {@code hidden} (HTML, 15.3.1). */
    @Test
    void what_is_marked_as_hidden_is_not_seen_whatever_else_is_said_of_it() {
        assertThat(everybodys).containsPattern("(?m)^\\[hidden] \\{ display: none !important; }");
    }

    @Test
    void colours_stand_nowhere_but_in_the_tokens() {
        String rest = css.replaceAll("(?s):root \\{.*?}", "");
        assertThat(Pattern.compile("#[0-9A-Fa-f]{3,8}\\b(?=[;, )])|rgba?\\(|hsla?\\(")
                        .matcher(rest)
                        .find())
                .isFalse();
    }

    @Test
    void nothing_is_fetched_from_outside() throws IOException {
        var outside = Pattern.compile("(?:https?:)?//[a-z0-9.-]+\\.[a-z]{2,}", Pattern.CASE_INSENSITIVE);
        try (Stream<Path> files =
                Stream.concat(Files.walk(WEB.resolve("static")), Files.walk(WEB.resolve("templates")))) {
            List<Path> texts = files.filter(file -> file.toString().matches(".*\\.(css|js|svg|jte|html)"))
                    .toList();
            assertThat(texts).hasSizeGreaterThan(20);
            for (Path text : texts) {
                String content = read(text)
                        .replace("http://www.w3.org/2000/svg", "")
                        .replaceAll("(?m)^\\s*//.*$", ""); // remarks in scripts fetch nothing
                var found = outside.matcher(content);
                assertThat(found.find()).as(text + " names an address outside").isFalse();
            }
        }
    }

    /** What a page needs before it is itself; what single pages load beyond it is small and theirs. */
    @Test
    void what_every_page_loads_weighs_under_100_kB() throws IOException {
        long weight = 0;
        try (Stream<Path> files = Files.walk(WEB.resolve("static"))) {
            for (Path file : files.filter(
                            each -> each.toString().matches(".*(tiewright\\.css|\\.woff2|\\.svg|forms\\.js|live\\.js)"))
                    .toList()) {
                weight += Files.size(file);
            }
        }
        assertThat(weight).isBetween(60_000L, (long) OF_EVERYBODY);
    }

    @Test
    void what_a_role_loads_beyond_it_weighs_under_10_kB_and_so_does_what_only_paper_needs() throws IOException {
        for (String sheet : List.of("captain", "desk", "cards", "print", "pack")) {
            assertThat(Files.size(WEB.resolve("static/" + sheet + ".css")))
                    .as(sheet)
                    .isBetween(1_000L, (long) OF_A_ROLE);
        }
    }

    @Test
    void every_class_a_piece_uses_is_in_the_stylesheet_or_plain() {
        // words without a rule of their own: they say what the other case of a condition is; a state always has its
        // shape
        var plain = List.of(
                "event",
                "club",
                "side",
                "words",
                "plain",
                "player",
                "field",
                "names",
                "table-foot",
                "frame",
                "columns",
                "do-next");
        var used = Pattern.compile("class=\"([a-z -]+)\"").matcher(ExamplesTest.rendered(Examples.shown()));
        while (used.find()) {
            for (String name : used.group(1).strip().split(" +")) {
                assertThat(plain.contains(name) || name.startsWith("state-") || css.contains("." + name))
                        .as("." + name)
                        .isTrue();
            }
        }
    }

    private static Map<String, String> tokens(String block) {
        var found = new HashMap<String, String>();
        var lines = Pattern.compile("--(\\w+): (#[0-9A-Fa-f]{6});").matcher(block);
        while (lines.find()) {
            found.putIfAbsent(lines.group(1), lines.group(2));
        }
        return found;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * channel(hex, 1) + 0.7152 * channel(hex, 3) + 0.0722 * channel(hex, 5);
    }

    private static double channel(String hex, int at) {
        double c = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
