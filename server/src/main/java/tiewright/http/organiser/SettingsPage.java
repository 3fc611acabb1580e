package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.Heading;
import tiewright.conditions.Preset;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
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
        Optional<Conditions> conditions = ConditionsForm.read(form);
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
        VisibleEvent event = visit.event();
        Conditions stands = stands(visit, tried);
        Fields fields = Fields.of(FORM, tried);
        List<SettingsView.Group> groups = Arrays.stream(Heading.values())
                .map(heading -> new SettingsView.Group(
                        "heading-" + heading.number(),
                        heading.number() + ". " + ConditionsWords.heading(heading),
                        ConditionsForm.fields(heading, stands, fields)))
                .toList();
        List<Option> presets = Arrays.stream(Preset.values())
                .map(preset -> Option.of(
                        preset.printed(),
                        preset.printed() + ": " + ConditionsWords.preset(preset),
                        preset == stands.base()))
                .toList();
        return Screen.of(
                "settings",
                visit.words().say("page-organiser.choose-the-conditions-of-play"),
                new SettingsView(
                        tried.refusal(),
                        intro(event),
                        tiewright.http.pieces.SelectField.of(
                                "start-from", visit.words().say("page-organiser.start-from-a-preset"), "", presets),
                        stands.base().printed(),
                        noted.notes().stream()
                                .map(note -> ConditionsWords.note(note, noted))
                                .toList(),
                        groups,
                        event.isFrozen() ? ruling(fields) : List.of()));
    }

    private static List<String> intro(VisibleEvent event) {
        List<String> intro = new ArrayList<>();
        intro.add(
                event.conditionsVersion() == 0
                        ? Words.of(event).say("page-organiser.nothing-is-published-yet-choose")
                        : Words.of(event)
                                .say(
                                        "page-organiser.version-holds-what-you-change",
                                        "conditionsVersion",
                                        event.conditionsVersion()));
        if (event.isFrozen()) {
            intro.add(Words.of(event).say("page-organiser.the-first-sheet-is-sealed"));
        }
        return intro;
    }

    private static List<FormField> ruling(Fields fields) {
        return List.of(
                fields.text("reason", TextField.Kind.LONG, "Why the conditions must change now", "")
                        .mustBeFilled(),
                fields.line("by", "Who rules, by name", "")
                        .withAutocomplete("name")
                        .mustBeFilled());
    }
}
