package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
import tiewright.http.views.SettingsView;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.wording.ConditionsWords;
import tiewright.wording.Words;

/** All settings as fields, each with its published example and whether the software obeys it. */
final class ConditionsForm {
    static final String PRESET = "preset";

    private final ConditionsWords words;
    private final Conditions stands;
    private final Fields fields;
    private final Tried tried;

    /** @param stands what the form starts from */
    ConditionsForm(ConditionsWords words, Conditions stands, Fields fields, Tried tried) {
        this.words = words;
        this.stands = stands;
        this.fields = fields;
        this.tried = tried;
    }

    /** The conditions that were typed; faults are noted beside their fields. */
    static Optional<Conditions> read(ConditionsWords words, Form form) {
        Optional<Preset> preset = form.must(PRESET, form.maybe(PRESET).flatMap(Preset::parse));
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        for (Setting setting : Setting.values()) {
            String value = form.mustText(setting.code());
            if (!value.isEmpty()) {
                SettingFault.in(setting, value).ifPresent(fault -> form.fault(refusal(words, fault)));
                values.put(setting, value);
            }
        }
        if (!form.isClean()) {
            return Optional.empty();
        }
        Conditions conditions = new Conditions(preset.orElseThrow(), values);
        conditions.clashes().forEach(fault -> form.fault(refusal(words, fault)));
        return Optional.of(conditions);
    }

    private static Refusal refusal(ConditionsWords words, SettingFault fault) {
        return Refusal.of("form.setting").with("sentence", words.fault(fault)).at(fault.setting());
    }

    /** What differs from the preset, each as its field. */
    SettingsView.Changed changed(Words said) {
        List<FormField> changed = Arrays.stream(Setting.values())
                .filter(this::isChanged)
                .map(this::field)
                .toList();
        return new SettingsView.Changed(
                said.say(
                        "page-organiser.changed",
                        "count",
                        changed.size(),
                        "all",
                        Setting.values().length,
                        "preset",
                        words.presetName(stands.base())),
                changed);
    }

    /** Every other setting, under its printed heading. */
    SettingsView.Rest rest(Words said) {
        List<SettingsView.Group> groups = Arrays.stream(Heading.values())
                .map(this::group)
                .filter(group -> !group.fields().isEmpty())
                .toList();
        long settings =
                groups.stream().mapToLong(group -> group.fields().size()).sum();
        return new SettingsView.Rest(
                said.say("page-organiser.the-others", "count", (int) settings, "headings", groups.size()), groups);
    }

    private SettingsView.Group group(Heading heading) {
        List<Setting> same = Setting.under(heading).stream()
                .filter(setting -> !isChanged(setting))
                .toList();
        return new SettingsView.Group(
                "heading-" + heading.number(),
                heading.number() + ". " + words.heading(heading),
                same.stream()
                        .map(setting -> words.value(setting, stands.value(setting)))
                        .collect(Collectors.joining("; ")),
                same.stream().anyMatch(setting -> !tried.error(setting.code()).isEmpty()),
                same.stream().map(this::field).toList());
    }

    private boolean isChanged(Setting setting) {
        return !tried.value(setting.code(), stands.value(setting)).equals(setting.of(stands.base()));
    }

    private FormField field(Setting setting) {
        String hint = hint(setting);
        String value = stands.value(setting);
        String label = words.name(setting);
        if (setting.domain() instanceof Domain.Choice choice) {
            List<Option> options = choice.choices().stream()
                    .map(one -> Option.of(one, words.value(setting, one), false))
                    .toList();
            return fields.select(setting.code(), label, "", value, options).withHint(hint);
        }
        TextField.Kind kind = setting.domain() instanceof Domain.Whole ? TextField.Kind.NUMBER : TextField.Kind.LINE;
        return fields.text(setting.code(), kind, label, value).withHint(hint).mustBeFilled();
    }

    private String hint(Setting setting) {
        List<String> parts = new ArrayList<>();
        if (!(setting.domain() instanceof Domain.Choice)) {
            parts.add(words.write(setting));
        }
        parts.add(words.published(setting));
        String preset = setting.of(stands.base());
        if (!preset.equals(stands.value(setting))) {
            parts.add(words.presetSays(setting, preset));
        }
        if (!setting.isObeyed()) {
            parts.add(words.notObeyed());
        }
        return String.join(" ", parts);
    }
}
