package tiewright.conditions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ConditionsTest {
    @ParameterizedTest
    @EnumSource
    void gives_every_preset_a_legal_value_for_every_setting(Preset preset) {
        Conditions conditions = Conditions.of(preset);
        assertThat(conditions.values()).hasSize(Setting.values().length);
        assertThat(conditions.differences()).isEmpty();
        assertThat(conditions.clashes()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void holds_a_setting_under_every_heading(Heading heading) {
        assertThat(Heading.values()).hasSize(33);
        assertThat(Setting.under(heading)).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void reads_back_what_it_wrote_for_every_choice(Setting setting) {
        for (String choice : setting.domain().choices()) {
            Conditions conditions = Conditions.of(Preset.TIMED).with(setting, choice);
            assertThat(Conditions.ofText(conditions.text())).isEqualTo(conditions);
        }
    }

    @Test
    void types_every_choice_of_a_typed_setting() {
        Conditions conditions = Conditions.of(Preset.CLUB_DAY);
        for (String choice : Setting.LATE_SHEET.domain().choices()) {
            assertThat(conditions.with(Setting.LATE_SHEET, choice).lateSheet().code())
                    .isEqualTo(choice);
        }
        for (String choice : Setting.DECIDER.domain().choices()) {
            assertThat(conditions.with(Setting.DECIDER, choice).decider().code())
                    .isEqualTo(choice);
        }
        for (String choice : Setting.WALKOVER_SCORE.domain().choices()) {
            assertThat(conditions
                            .with(Setting.WALKOVER_SCORE, choice)
                            .walkoverScore()
                            .code())
                    .isEqualTo(choice);
        }
        assertThat(conditions.tiePoints()).isEqualTo(TiePoints.of(1, 0, 0));
        assertThat(conditions.medicalMinutes()).isEqualTo(15);
    }

    @Test
    void reads_a_preset_and_what_differs_from_it() {
        ConditionsReading reading = Conditions.read(Map.of("preset", "Strict order", "rubbers", "7"));
        assertThat(reading.faults()).isEmpty();
        assertThat(reading.conditions().base()).isEqualTo(Preset.STRICT_ORDER);
        assertThat(reading.conditions().differences()).containsExactly(Map.entry(Setting.RUBBERS, "7"));
    }

    @Test
    void names_every_fault_of_a_file_in_its_order() {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("preset", "Club night");
        lines.put("rubber", "4");
        lines.put("rubbers", "0");
        lines.put("decider", "coin");
        lines.put("scoring", "side-out");
        lines.put("tie_points", "0/1/2");
        lines.put("level_teams", "goals>lots");
        lines.put("heat_stop_wbgt", "20");
        assertThat(Conditions.read(lines).faults())
                .extracting(SettingFault::kind)
                .containsExactly(
                        SettingFault.Kind.UNKNOWN_PRESET,
                        SettingFault.Kind.UNKNOWN_SETTING,
                        SettingFault.Kind.OUT_OF_RANGE,
                        SettingFault.Kind.NOT_A_CHOICE,
                        SettingFault.Kind.NOT_A_FORMAT,
                        SettingFault.Kind.NOT_TIE_POINTS,
                        SettingFault.Kind.NOT_LEVEL_STEPS,
                        SettingFault.Kind.STOP_BELOW_CAUTION);
    }

    @Test
    void refuses_a_value_that_is_not_allowed() {
        Conditions conditions = Conditions.of(Preset.CLUB_DAY);
        assertThatThrownBy(() -> conditions.with(Setting.BEST_OF, "2")).isInstanceOf(IllegalArgumentException.class);
    }
}
