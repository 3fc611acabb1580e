package tiewright.http.organiser;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.SettingsView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.PublishConditions;
import tiewright.setup.SignedReason;
import tiewright.wording.ConditionsWords;
import tiewright.wording.Words;

/** Choosing the conditions of play: a preset, and anything that differs from it. */
final class SettingsPage implements Page {
    private static final String HERE = "/organiser/conditions";
    private static final String FORM = "conditions";
    private static final String LOOK = "look";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, SettingsPage::publish);
    }

    private static void publish(Visit visit) {
        Form form = visit.form();
        Optional<Conditions> conditions = ConditionsForm.read(new ConditionsWords(visit.words()), form);
        Optional<SignedReason> ruling = visit.event().isFrozen()
                ? Optional.of(new SignedReason(form.mustText("reason"), form.mustText("by")))
                : Optional.empty();
        if (form.text("press").equals(LOOK) && form.isClean()) {
            visit.show(screen(visit, Tried.again(form), conditions.orElseThrow()));
            return;
        }
        visit.attempt(
                form,
                () -> new PublishConditions(conditions.orElseThrow(), ruling),
                "/conditions",
                tried -> screen(visit, tried));
    }

    /** What the form starts from: what was typed, else the preset asked for, else what holds. */
    private static Conditions stands(Visit visit, Tried tried) {
        Optional<Preset> asked = tried.isNothing()
                ? Optional.ofNullable(visit.ctx().queryParam(ConditionsForm.PRESET))
                        .flatMap(Preset::parse)
                : Preset.parse(tried.typed().text(ConditionsForm.PRESET));
        return asked.map(Conditions::of).orElse(visit.event().conditions());
    }

    private static Screen screen(Visit visit, Tried tried) {
        return screen(visit, tried, stands(visit, tried));
    }

    /** @param noted the conditions whose bad combinations are told */
    private static Screen screen(Visit visit, Tried tried, Conditions noted) {
        Fields fields = Fields.of(FORM, tried);
        ConditionsWords words = new ConditionsWords(visit.words());
        ConditionsForm form = new ConditionsForm(words, stands(visit, tried), fields, tried);
        return Screen.of(
                "settings",
                visit.say("page-organiser.choose-the-conditions-of-play"),
                new SettingsView(
                        tried.refusal(),
                        intro(visit.event()),
                        presets(words, stands(visit, tried).base()),
                        stands(visit, tried).base().printed(),
                        noted.notes().stream()
                                .map(note -> words.note(note, noted))
                                .toList(),
                        form.changed(visit.words()),
                        form.rest(visit.words()),
                        visit.event().isFrozen() ? ruling(visit, fields) : List.of()));
    }

    private static List<SettingsView.Preset> presets(ConditionsWords words, Preset base) {
        return Arrays.stream(Preset.values())
                .map(preset -> new SettingsView.Preset(
                        words.presetName(preset),
                        words.preset(preset),
                        HERE + "?" + ConditionsForm.PRESET + "="
                                + URLEncoder.encode(preset.printed(), StandardCharsets.UTF_8),
                        preset == base))
                .toList();
    }

    private static List<String> intro(VisibleEvent event) {
        List<String> intro = new ArrayList<>();
        intro.add(
                event.conditionsVersion() == 0
                        ? Words.say(event, "page-organiser.nothing-is-published-yet-choose")
                        : Words.say(
                                event,
                                "page-organiser.version-holds-what-you-change",
                                "conditionsVersion",
                                event.conditionsVersion()));
        if (event.isFrozen()) {
            intro.add(Words.say(event, "page-organiser.the-first-sheet-is-sealed"));
        }
        return intro;
    }

    private static List<FormField> ruling(Visit visit, Fields fields) {
        return List.of(
                fields.text(
                                "reason",
                                TextField.Kind.LONG,
                                visit.say("page-organiser.why-the-conditions-must-change"),
                                "")
                        .mustBeFilled(),
                fields.line("by", visit.say("page-organiser.who-rules-by-name"), "")
                        .withAutocomplete("name")
                        .mustBeFilled());
    }
}
