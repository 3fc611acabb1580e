package tiewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A text kept in the repository that a test compares with what the program makes today. {@code -Dgolden=write} writes it
 * anew, to be read before it is committed; the build machine, which sets {@code CI}, refuses to.
 */
public final class Golden {
    private Golden() {}

    /** @param fromRoot such as {@code docs/conditions.md} */
    public static void matches(String fromRoot, String text) throws IOException {
        Path file = root().resolve(fromRoot);
        if ("write".equals(System.getProperty("golden"))) {
            assertThat(System.getenv("CI"))
                    .as("a golden text is not written on the build machine")
                    .isNull();
            Files.createDirectories(file.getParent());
            Files.writeString(file, text, StandardCharsets.UTF_8);
        }
        assertThat(file).as("run this test with -Dgolden=write to write it").exists();
        assertThat(text)
                .as("%s, rewritten by -Dgolden=write", fromRoot)
                .isEqualTo(Files.readString(file, StandardCharsets.UTF_8));
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("server")) ? here : here.getParent();
    }
}
