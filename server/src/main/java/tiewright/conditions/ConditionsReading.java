package tiewright.conditions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What {@code conditions.csv} says.
 *
 * @param conditions the preset with every line that could be used; not to be used while there are faults
 * @param faults one for each line that could not, in the order of the lines
 * @param notes what goes badly together, for somebody to read; no reason to refuse the file
 */
public record ConditionsReading(Conditions conditions, List<SettingFault> faults, List<ConditionsNote> notes) {
    private static final String PRESET = "preset";

    public ConditionsReading {
        faults = List.copyOf(faults);
        notes = List.copyOf(notes);
    }

    static ConditionsReading of(Map<String, String> lines) {
        List<SettingFault> faults = new ArrayList<>();
        EnumMap<Setting, String> values = new EnumMap<>(Setting.class);
        lines.forEach((name, value) -> {
            if (!name.equals(PRESET)) {
                read(name, value, values, faults);
            } else if (Preset.parse(value).isEmpty()) {
                List<String> printed =
                        Arrays.stream(Preset.values()).map(Preset::printed).toList();
                faults.add(new SettingFault(SettingFault.Kind.UNKNOWN_PRESET, PRESET, value, printed));
            }
        });
        Preset base = Preset.parse(lines.getOrDefault(PRESET, "")).orElse(Preset.CLUB_DAY);
        Conditions conditions = new Conditions(base, values);
        faults.addAll(conditions.clashes());
        return new ConditionsReading(conditions, faults, conditions.notes());
    }

    private static void read(String name, String value, Map<Setting, String> values, List<SettingFault> faults) {
        Setting.parse(name)
                .ifPresentOrElse(
                        setting -> SettingFault.in(setting, value)
                                .ifPresentOrElse(faults::add, () -> values.put(setting, value)),
                        () -> faults.add(new SettingFault(SettingFault.Kind.UNKNOWN_SETTING, name, value, List.of())));
    }
}
