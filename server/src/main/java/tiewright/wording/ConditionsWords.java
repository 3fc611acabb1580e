package tiewright.wording;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tiewright.conditions.Conditions;
import tiewright.conditions.ConditionsNote;
import tiewright.conditions.Domain;
import tiewright.conditions.Heading;
import tiewright.conditions.LevelSteps;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;
import tiewright.conditions.TiePoints;
import tiewright.scoring.Format;

/** The conditions of play as a person reads them, on the page, on paper and in {@code docs/conditions.md} alike. */
public final class ConditionsWords {
    private static final Text TEXT = Text.of("conditions");
    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");
    private static final String AMONG = "-among";

    private ConditionsWords() {}

    public static String heading(Heading heading) {
        return TEXT.plain("heading." + heading.code());
    }

    /** What a preset is for, in a sentence. */
    public static String preset(Preset preset) {
        return TEXT.plain("preset." + preset);
    }

    public static String name(Setting setting) {
        return TEXT.plain("name." + setting.code());
    }

    /** Where values of this setting are published; says so where no source is known or it was not looked up again. */
    public static String example(Setting setting) {
        return TEXT.plain("example." + setting.code());
    }

    /** @param value one that the setting allows */
    public static String value(Setting setting, String value) {
        Domain domain = setting.domain();
        if (domain instanceof Domain.Scoring) {
            return FormatWords.of(Format.parse(value).orElseThrow());
        }
        if (domain instanceof Domain.Points) {
            return points(TiePoints.parse(value).orElseThrow());
        }
        if (domain instanceof Domain.Level && !LevelSteps.NAMED.contains(value)) {
            return TEXT.say(
                    "level.steps",
                    Arrays.stream(value.split(">")).map(ConditionsWords::step).collect(Collectors.joining(", ")));
        }
        String key = "value." + setting.code();
        return TEXT.has(key + "." + value)
                ? TEXT.plain(key + "." + value)
                : TEXT.plain(key).replace("{value}", value);
    }

    private static String points(TiePoints points) {
        return points.draw() == points.loss()
                ? TEXT.say("points.no-draw", points.win(), points.loss())
                : TEXT.say("points.all", points.win(), points.draw(), points.loss());
    }

    private static String step(String step) {
        boolean plain = TEXT.has("step." + step);
        return plain
                ? TEXT.plain("step." + step)
                : TEXT.say("step.among", TEXT.plain("step." + step.replace(AMONG, "")));
    }

    /** The setting and its value as a line of the printed conditions, with a warning where only people apply it. */
    public static String sentence(Setting setting, String value) {
        String sentence = TEXT.say("sentence", name(setting), value(setting, value));
        return setting.isObeyed(value) ? sentence : sentence + " " + notObeyed();
    }

    /** What is said of a setting that {@link Setting#isObeyed} calls false. */
    public static String notObeyed() {
        return TEXT.plain("not-obeyed");
    }

    /** What may be written, such as <em>1 to 12</em> or <em>none, knockout, all</em>. */
    public static String allowed(Setting setting) {
        Domain domain = setting.domain();
        if (domain instanceof Domain.Whole whole) {
            return TEXT.say("allowed.whole", whole.least(), whole.most());
        }
        if (domain instanceof Domain.Degrees degrees) {
            return TEXT.say("allowed.whole", Math.round(degrees.least()), Math.round(degrees.most()));
        }
        if (domain instanceof Domain.Choice choice) {
            return String.join(", ", choice.choices());
        }
        return TEXT.plain(
                domain instanceof Domain.Scoring
                        ? "allowed.scoring"
                        : domain instanceof Domain.Points ? "allowed.points" : "allowed.level");
    }

    /** What is wrong with a line of the conditions, and what to write instead. */
    public static String fault(SettingFault fault) {
        Map<String, String> data = new HashMap<>();
        data.put(
                "setting",
                Setting.parse(fault.setting()).map(ConditionsWords::quoted).orElse(fault.setting()));
        data.put("value", fault.value());
        data.put("allowed", String.join(", ", fault.allowed()));
        if (!fault.allowed().isEmpty()) {
            data.put("least", fault.allowed().get(0));
            data.put("most", fault.allowed().get(fault.allowed().size() - 1));
        }
        return filled(fault.kind().code(), data);
    }

    private static String quoted(Setting setting) {
        return setting.code() + " (" + name(setting) + ")";
    }

    /** What goes badly together in these conditions. */
    public static String note(ConditionsNote note, Conditions conditions) {
        List<Setting> settings = note.settings();
        Setting second = settings.get(settings.size() - 1);
        Map<String, String> data = new HashMap<>(note.data());
        data.put("first", "\"" + name(settings.get(0)) + "\"");
        data.put("second", name(second) + ": " + value(second, conditions.value(second)));
        if (data.containsKey("steps")) {
            data.put(
                    "steps",
                    Arrays.stream(data.get("steps").split(">"))
                            .map(ConditionsWords::step)
                            .collect(Collectors.joining(", ")));
        }
        return filled(note.kind().code(), data);
    }

    private static String filled(String code, Map<String, String> data) {
        return PLACE.matcher(TEXT.plain(code))
                .replaceAll(place -> Matcher.quoteReplacement(Optional.ofNullable(data.get(place.group(1)))
                        .orElseThrow(
                                () -> new IllegalStateException("the words of " + code + " need " + place.group(1)))));
    }
}
