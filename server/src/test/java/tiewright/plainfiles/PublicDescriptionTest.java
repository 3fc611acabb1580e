package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;

/** The public description names every file, column and setting as the program reads them. */
class PublicDescriptionTest {
    private static final Path PAGE = Path.of("..", "docs", "plain-files.md");

    @Test
    void every_file_stands_there_with_its_columns() throws IOException {
        List<String> lines = Files.readAllLines(PAGE);
        for (PlainFile file : PlainFile.values()) {
            String columns = file.columns().stream()
                    .map(column -> "`" + column + "`" + (file.required().contains(column) ? "" : "?"))
                    .collect(Collectors.joining(", "));
            assertThat(lines)
                    .as(file.fileName())
                    .anyMatch(line -> line.startsWith("| `" + file.fileName() + "` | " + columns + " |"));
        }
    }

    @Test
    void every_setting_stands_there_with_its_value_in_each_preset() throws IOException {
        List<String> lines = Files.readAllLines(PAGE);
        for (Setting setting : Setting.values()) {
            String presets = Arrays.stream(Preset.values()).map(setting::of).collect(Collectors.joining(" | "));
            String obeyed = setting.isObeyed() ? "Tiewright" : "people";
            assertThat(lines)
                    .as(setting.code())
                    .anyMatch(line ->
                            line.startsWith("| " + setting.heading().number() + " | `" + setting.code() + "` | ")
                                    && line.endsWith(" | " + presets + " | " + obeyed + " |"));
        }
    }
}
