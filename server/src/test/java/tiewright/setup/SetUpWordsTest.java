package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.draw.DrawFault;
import tiewright.wording.Words;

/** Every code of the room has its sentence, and no sentence is left without a code. */
class SetUpWordsTest {
    private static final Path ROOM = Path.of("src/main/java/tiewright/setup");
    private static final Path SENTENCES = Path.of("src/main/resources/tiewright/wording/setup.properties");
    private static final Pattern CODE = Pattern.compile("\"(setup\\.[a-z-]+)\"");
    private static final Pattern LINE = Pattern.compile("\\.(?:line|reason)\\(\"(\\w+)\", (?!neutral|town|Optional)");

    private static Set<String> codes() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> files = Files.list(ROOM)) {
            for (Path file : files.toList()) {
                String source = Files.readString(file);
                Matcher code = CODE.matcher(source);
                while (code.find()) {
                    codes.add(code.group(1));
                }
                Matcher line = LINE.matcher(source);
                while (line.find()) {
                    codes.add("setup.missing." + line.group(1));
                }
            }
        }
        return codes;
    }

    @Test
    void every_code_has_a_sentence_and_every_sentence_a_code() throws IOException {
        Set<String> worded = new TreeSet<>();
        Files.readAllLines(SENTENCES).stream()
                .filter(line -> line.startsWith("setup."))
                .forEach(line -> worded.add(line.substring(0, line.indexOf('='))));
        assertThat(codes()).hasSizeGreaterThan(60).isEqualTo(worded);
    }

    @Test
    void every_fault_of_a_draw_has_a_sentence() {
        assertThat(Arrays.stream(DrawFault.Code.values())
                        .map(code ->
                                "draw." + code.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .allMatch(Words::has);
    }
}
