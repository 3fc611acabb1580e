package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tiewright.conditions.Conditions;
import tiewright.conditions.ConditionsNote;
import tiewright.conditions.Domain;
import tiewright.conditions.Heading;
import tiewright.conditions.LevelSteps;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;

class ConditionsWordsTest {
    private static final ConditionsWords WORDS = ConditionsWords.ofDocuments();

    private static final ResourceBundle TEXTS =
            ResourceBundle.getBundle("tiewright.wording.conditions", java.util.Locale.ROOT);

    /** Every value that a page offers, the ends and some middle of those that are not a list. */
    private static List<String> offered(Setting setting) {
        Domain domain = setting.domain();
        List<String> values = new ArrayList<>(domain.choices());
        if (domain instanceof Domain.Whole whole) {
            for (int number = whole.least(); number <= whole.most(); number++) {
                values.add(Integer.toString(number));
            }
        } else if (domain instanceof Domain.Degrees) {
            values.addAll(List.of("28", "30.1"));
        } else if (domain instanceof Domain.Scoring) {
            values.addAll(List.of(
                    "side-out-11",
                    "rally-21-cap-30",
                    "rally-15-serve-last",
                    "side-out-7-by-1",
                    "rally-11-cap-15-serve-last"));
        } else if (domain instanceof Domain.Points) {
            values.addAll(List.of("1/0/0", "2/1/0", "3/1/0", "2/2/0", "4/2/1"));
        } else if (domain instanceof Domain.Level) {
            values.addAll(LevelSteps.NAMED);
            values.addAll(LevelSteps.steps());
        }
        Preset[] presets = Preset.values();
        for (Preset preset : presets) {
            values.add(setting.of(preset));
        }
        return values;
    }

    @ParameterizedTest
    @EnumSource
    void has_words_for_every_offered_value(Setting setting) {
        assertThat(WORDS.name(setting)).isNotBlank();
        assertThat(WORDS.allowed(setting)).isNotBlank();
        for (String value : offered(setting)) {
            assertThat(setting.domain().allows(value)).as(value).isTrue();
            assertThat(WORDS.value(setting, value)).as(value).isNotBlank().doesNotContain("{", "}", "''", " 1 minutes");
        }
    }

    /** Two choices that read alike would hide what was chosen. */
    @ParameterizedTest
    @EnumSource
    void says_different_values_differently(Setting setting) {
        TreeSet<String> values = new TreeSet<>(offered(setting));
        values.remove("head-to-head-among"); // the same as head-to-head
        assertThat(values.stream().map(value -> WORDS.value(setting, value))).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource
    void names_a_publication_or_says_that_there_is_none(Setting setting) {
        assertThat(WORDS.example(setting))
                .isNotBlank()
                .doesNotContainPattern("\\bR\\d|\\bP\\d|\\(seen\\)|\\(2nd\\)|\\(mem\\)|JOB|CHECKS")
                .endsWith(".");
    }

    @ParameterizedTest
    @EnumSource
    void says_of_every_setting_whether_the_software_acts_on_it(Setting setting) {
        for (String value : offered(setting)) {
            String sentence = WORDS.sentence(setting, value);
            assertThat(sentence).startsWith(WORDS.name(setting) + ": ");
            assertThat(sentence.endsWith("Noted and printed; the software does not act on it."))
                    .as(value)
                    .isEqualTo(!setting.isObeyed(value));
        }
    }

    @Test
    void has_a_title_for_each_of_the_33_headings() {
        assertThat(java.util.Arrays.stream(Heading.values()).map(WORDS::heading))
                .hasSize(33)
                .doesNotHaveDuplicates();
        assertThat(java.util.Arrays.stream(Preset.values()).map(WORDS::preset))
                .hasSize(4)
                .doesNotHaveDuplicates();
    }

    @Test
    void reads_a_value_as_people_say_it() {
        assertThat(WORDS.value(Setting.SCORING, "rally-21-cap-30"))
                .isEqualTo("every rally scores, to 21, two ahead, at most 30");
        assertThat(WORDS.value(Setting.TIE_POINTS, "2/1/0")).isEqualTo("2 for a win, 1 for a draw, 0 for a defeat");
        assertThat(WORDS.value(Setting.TIE_POINTS, "1/0/0")).isEqualTo("1 for a win, 0 for anything else");
        assertThat(WORDS.value(Setting.GRACE_MINUTES, "1")).isEqualTo("1 minute");
        assertThat(WORDS.value(Setting.LEVEL_TEAMS, "rubbers-won>points-ratio-among>lots"))
                .isEqualTo("in this order: rubbers won, ratio of points won to lost among the level clubs, lots");
        assertThat(WORDS.sentence(Setting.RUBBERS, "4"))
                .isEqualTo("Rubbers in a tie, not counting the decider: 4 rubbers.");
    }

    @Test
    void says_of_every_fault_what_to_write_instead() {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("preset", "Club night");
        lines.put("rubber", "4");
        lines.put("rubbers", "{most}");
        lines.put("decider", "coin");
        lines.put("scoring", "side-out");
        lines.put("tie_points", "0/1/2");
        lines.put("level_teams", "goals>lots");
        lines.put("heat_stop_wbgt", "20");
        lines.put("rubber_weights", "6/0/3");
        lines.put("rubber_kinds", "women;ladies");
        lines.put("unplayed_tie", "0/2");
        List<SettingFault> faults = new ArrayList<>(Conditions.read(lines).faults());
        faults.addAll(Conditions.read(Map.of("rubber_weights", "6/4/3", "rubber_kinds", "women;men"))
                .faults());
        assertThat(faults).extracting(SettingFault::kind).containsExactlyInAnyOrder(SettingFault.Kind.values());
        assertThat(faults)
                .extracting(WORDS::fault)
                .contains(
                        "There is no preset \"Club night\". Choose one of: Club day, Strict order, Everyone plays, Timed.",
                        "\"{most}\" is out of range for rubbers (Rubbers in a tie, not counting the decider): a number from 1 to 12.",
                        "\"6/4/3\" weighs 3 rubbers, and a tie has 4. Give each rubber its weight.",
                        "\"women;men\" names 2 rubbers, and a tie has 4. Give each rubber its kind.",
                        "\"coin\" is not one of the choices for decider (Who plays when the rubbers finish level): none, any-two, one-from-each, singles-turns.");
    }

    @ParameterizedTest
    @EnumSource
    void has_a_sentence_for_every_note(ConditionsNote.Kind kind) {
        assertThat(TEXTS.getString(kind.code())).isNotBlank();
    }

    @Test
    void says_why_a_setting_has_no_effect() {
        Conditions conditions = Conditions.of(Preset.CLUB_DAY).with(Setting.LATE_SHEET, "forfeit");
        assertThat(conditions.notes())
                .extracting(note -> WORDS.note(note, conditions))
                .contains(
                        "\"Minutes of grace for a late sheet\" has no effect while this holds: A sheet that is not in when it is due:"
                                + " the referee may forfeit the rubbers without a pair.");
    }

    /** A text that nothing asks for is a setting that was renamed or a value that is gone. */
    @Test
    void has_no_words_left_over() {
        List<String> stray = new ArrayList<>();
        for (String key : new TreeSet<>(TEXTS.keySet())) {
            String[] parts = key.split("\\.", 3);
            boolean known =
                    switch (parts[0]) {
                        case "name", "example" -> Setting.parse(parts[1]).isPresent();
                        case "value" ->
                            Setting.parse(parts[1])
                                    .filter(setting ->
                                            parts.length < 3 || setting.domain().allows(parts[2]))
                                    .isPresent();
                        case "heading" ->
                            java.util.Arrays.stream(Heading.values())
                                    .anyMatch(heading -> heading.code().equals(parts[1]));
                        default -> true;
                    };
            if (!known) {
                stray.add(key);
            }
        }
        assertThat(stray).isEmpty();
    }
}
