package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.Domain;
import tiewright.conditions.Heading;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;
import tiewright.event.Refusal;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.wording.ConditionsWords;

/** All settings as fields, each with its published example and whether the software obeys it. */
final class ConditionsForm {
    static final String PRESET = "preset";

    private ConditionsForm() {}

    /** The conditions that were typed; faults are noted beside their fields. */
    static Optional<Conditions> read(Form form) {
        Optional<Preset> preset = form.must(PRESET, form.maybe(PRESET).flatMap(Preset::parse));
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        for (Setting setting : Setting.values()) {
            String value = form.mustText(setting.code());
            if (!value.isEmpty()) {
                Conditions.fault(setting, value).ifPresent(fault -> form.fault(refusal(fault)));
                values.put(setting, value);
            }
        }
        if (!form.isClean()) {
            return Optional.empty();
        }
        Conditions conditions = new Conditions(preset.orElseThrow(), values);
        conditions.heatFault().ifPresent(fault -> form.fault(refusal(fault)));
        return Optional.of(conditions);
    }

    private static Refusal refusal(SettingFault fault) {
        return Refusal.of("form.setting")
                .with("sentence", ConditionsWords.fault(fault))
                .at(fault.setting());
    }

    /** The fields under one heading. */
    static List<FormField> fields(Heading heading, Conditions stands, Fields fields) {
        List<FormField> all = new ArrayList<>();
        Setting.under(heading).forEach(setting -> all.add(field(setting, stands, fields)));
        return all;
    }

    private static FormField field(Setting setting, Conditions stands, Fields fields) {
        String hint = hint(setting, stands);
        String value = stands.value(setting);
        String label = ConditionsWords.name(setting);
        if (setting.domain() instanceof Domain.Choice choice) {
            List<Option> options = choice.choices().stream()
                    .map(one -> Option.of(one, ConditionsWords.value(setting, one), false))
                    .toList();
            return fields.select(setting.code(), label, "", value, options).withHint(hint);
        }
        TextField.Kind kind = setting.domain() instanceof Domain.Whole ? TextField.Kind.NUMBER : TextField.Kind.LINE;
        return fields.text(setting.code(), kind, label, value).withHint(hint).mustBeFilled();
    }

    private static String hint(Setting setting, Conditions stands) {
        List<String> parts = new ArrayList<>();
        if (!(setting.domain() instanceof Domain.Choice)) {
            parts.add("Write: " + ConditionsWords.allowed(setting) + ".");
        }
        parts.add("Published: " + ConditionsWords.example(setting));
        String preset = setting.of(stands.base());
        if (!preset.equals(stands.value(setting))) {
            parts.add("The preset says: " + ConditionsWords.value(setting, preset) + ".");
        }
        if (!setting.isObeyed()) {
            parts.add(ConditionsWords.notObeyed());
        }
        return String.join(" ", parts);
    }
}
