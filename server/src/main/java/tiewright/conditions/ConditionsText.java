package tiewright.conditions;

import java.util.EnumMap;

/** Conditions as the ledger keeps them: every value on a line of its own. */
final class ConditionsText {
    private ConditionsText() {}

    static String of(Conditions conditions) {
        StringBuilder text =
                new StringBuilder("preset=").append(conditions.base().printed()).append('\n');
        conditions
                .values()
                .forEach((setting, value) ->
                        text.append(setting.code()).append('=').append(value).append('\n'));
        return text.toString();
    }

    static Conditions read(String text) {
        Preset base = Preset.CLUB_DAY;
        EnumMap<Setting, String> values = new EnumMap<>(Setting.class);
        for (String line : text.split("\n")) {
            int equals = line.indexOf('=');
            String value = line.substring(equals + 1);
            if (line.startsWith("preset=")) {
                base = Preset.parse(value).orElseThrow();
            } else {
                Setting.parse(line.substring(0, equals)).ifPresent(setting -> values.put(setting, value));
            }
        }
        return new Conditions(base, values);
    }
}
