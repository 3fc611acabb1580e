package tiewright.wording;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tiewright.Golden;
import tiewright.conditions.Domain;
import tiewright.conditions.Heading;
import tiewright.conditions.LevelSteps;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;

/** {@code docs/conditions.md} says what the program says: it is made from the same words. */
class ConditionsPageTest {
    private static final ConditionsWords WORDS = ConditionsWords.ofDocuments();

    private static final String TOP = """
      # The conditions of play

      An organiser chooses the conditions before play, publishes them with a number and a date, and changes them later only by a
      ruling. There are %d headings with %d settings. Four presets fill in all of them; any value can then be changed. In
      `conditions.csv` a line holds the name of a setting and its value; `preset` names the preset.

      - **Your competition's printed conditions override these settings.** The examples say where a value was found; rules change,
        so look up the edition that binds you. *Second-hand* means known from a summary, *from memory* not looked up again.
      - A setting or value marked *not acted on* is noted and printed, so that everybody knows it; people apply it, the software does not.
      - Officials decide. No setting makes the software forfeit, default or disqualify.
      - Combinations that go badly together, such as no minutes of grace, are said on the page before publication.

      This page is written by `ConditionsPageTest` from the words that the program uses (`-Dgolden=write`).

      """;

    @Test
    void the_page_in_docs_agrees_with_the_words() throws IOException {
        StringBuilder page = new StringBuilder(TOP.formatted(Heading.values().length, Setting.values().length));
        presets(page);
        page.append("## Every setting\n\n");
        for (Heading heading : Heading.values()) {
            page.append("### ")
                    .append(heading.number())
                    .append(". ")
                    .append(WORDS.heading(heading))
                    .append("\n\n");
            Setting.under(heading).forEach(setting -> setting(page, setting));
        }
        Golden.matches("docs/conditions.md", page.toString());
    }

    private static void presets(StringBuilder page) {
        page.append("## The four presets\n\n");
        for (Preset preset : Preset.values()) {
            page.append("- **")
                    .append(preset.printed())
                    .append("**: ")
                    .append(WORDS.preset(preset))
                    .append('\n');
        }
        page.append("\n| | setting | ")
                .append(Arrays.stream(Preset.values()).map(Preset::printed).collect(Collectors.joining(" | ")))
                .append(" | published example |\n|---|---|---|---|---|---|---|\n");
        for (Setting setting : Setting.values()) {
            String values = Arrays.stream(Preset.values()).map(setting::of).collect(Collectors.joining(" | "));
            page.append("| ")
                    .append(setting.heading().number())
                    .append(" | `")
                    .append(setting.code())
                    .append('`')
                    .append(setting.isObeyed() ? "" : " (not acted on)")
                    .append(" | ")
                    .append(values)
                    .append(" | ")
                    .append(WORDS.example(setting))
                    .append(" |\n");
        }
        page.append('\n');
    }

    private static void setting(StringBuilder page, Setting setting) {
        page.append("`")
                .append(setting.code())
                .append("`: ")
                .append(WORDS.name(setting))
                .append(". ");
        List<String> listed = setting.domain() instanceof Domain.Level
                ? LevelSteps.NAMED
                : setting.domain().choices();
        if (setting.domain() instanceof Domain.Choice) {
            page.append("One of:\n\n");
        } else {
            page.append("Write ").append(WORDS.allowed(setting)).append(".\n\n");
        }
        listed.forEach(value -> page.append("- `")
                .append(value)
                .append("`: ")
                .append(WORDS.value(setting, value))
                .append(setting.isObeyed() && !setting.isObeyed(value) ? " (*not acted on*)" : "")
                .append('\n'));
        if (setting.domain() instanceof Domain.Level) {
            page.append("- steps: `")
                    .append(String.join("`, `", LevelSteps.steps()))
                    .append("`\n");
        }
        page.append(listed.isEmpty() ? "" : "\n");
        page.append("Published: ").append(WORDS.example(setting)).append("\n\n");
        if (!setting.isObeyed()) {
            page.append("*").append(WORDS.notObeyed()).append("*\n\n");
        }
    }
}
