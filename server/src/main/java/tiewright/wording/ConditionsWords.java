package tiewright.wording;

import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.ConditionsNote;
import tiewright.conditions.Domain;
import tiewright.conditions.Heading;
import tiewright.conditions.LevelSteps;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;
import tiewright.conditions.TiePoints;
import tiewright.conditions.UnplayedTie;
import tiewright.scoring.Format;

/** The conditions of play as a person reads them, on the page, on paper and in {@code docs/conditions.md} alike. */
public final class ConditionsWords {
    private static final String AMONG = "-among";

    private static final Map<Class<? extends Domain>, String> ALLOWED = Map.of(
            Domain.Scoring.class, "scoring",
            Domain.Points.class, "points",
            Domain.Unplayed.class, "unplayed",
            Domain.Kinds.class, "kinds",
            Domain.Weights.class, "weights",
            Domain.Level.class, "level");

    private final Words words;

    public ConditionsWords(Words words) {
        this.words = words;
    }

    /** As commands and documents speak. */
    public static ConditionsWords ofDocuments() {
        return new ConditionsWords(Words.ofCodes(ZoneOffset.UTC));
    }

    public String heading(Heading heading) {
        return say("heading." + heading.code());
    }

    /** What a preset is for, in a sentence. */
    public String preset(Preset preset) {
        return say("preset." + preset);
    }

    /** What a preset is called; files keep its printed name. */
    public String presetName(Preset preset) {
        return say("preset-name." + preset);
    }

    public String name(Setting setting) {
        return say("name." + setting.code());
    }

    /** Where values of this setting are published; says so where no source is known or it was not looked up again. */
    public String example(Setting setting) {
        return say("example." + setting.code());
    }

    /** @param value one that the setting allows */
    public String value(Setting setting, String value) {
        Domain domain = setting.domain();
        if (domain instanceof Domain.Scoring) {
            return new FormatWords(words).of(Format.parse(value).orElseThrow());
        }
        if (domain instanceof Domain.Points) {
            return points(TiePoints.parse(value).orElseThrow());
        }
        if (isOfEachRubber(setting, value)) {
            return eachRubber(domain, value);
        }
        if (domain instanceof Domain.Unplayed && UnplayedTie.parse(value).isPresent()) {
            UnplayedTie points = UnplayedTie.parse(value).get();
            return say("unplayed", "win", points.win(), "loss", points.loss());
        }
        if (domain instanceof Domain.Level && !LevelSteps.NAMED.contains(value)) {
            return say("level.steps", "steps", steps(value));
        }
        String key = "value." + setting.code();
        return has(key + "." + value) ? say(key + "." + value) : say(key, "value", value);
    }

    private static boolean isOfEachRubber(Setting setting, String value) {
        return (setting.domain() instanceof Domain.Kinds || setting.domain() instanceof Domain.Weights)
                && !has("value." + setting.code() + "." + value);
    }

    /** Weights or kinds, rubber by rubber. */
    private String eachRubber(Domain domain, String value) {
        return domain instanceof Domain.Weights
                ? say("weights", "weights", List.of(value.split("/")))
                : say(
                        "kinds",
                        "kinds",
                        Arrays.stream(value.split(";"))
                                .map(kind -> say("kind." + kind))
                                .toList());
    }

    private String points(TiePoints points) {
        return switch (points.per()) {
            case TIE -> end(points);
            case RUBBER -> each(points, say("points.rubbers"));
            case GAME -> each(points, say("points.games"));
        };
    }

    private String each(TiePoints points, String each) {
        return points.isWithoutEnd() ? each : say("points.both", "each", each, "end", end(points));
    }

    private String end(TiePoints points) {
        return points.draw() == points.loss()
                ? say("points.no-draw", "win", points.win(), "loss", points.loss())
                : say("points.all", "win", points.win(), "draw", points.draw(), "loss", points.loss());
    }

    private String step(String step) {
        return has("step." + step)
                ? say("step." + step)
                : say("step.among", "step", say("step." + step.replace(AMONG, "")));
    }

    private List<String> steps(String value) {
        return Arrays.stream(value.split(">")).map(this::step).toList();
    }

    /** The setting and its value as a line of the printed conditions, with a warning where only people apply it. */
    public String sentence(Setting setting, String value) {
        String sentence = say("sentence", "setting", name(setting), "value", value(setting, value));
        return setting.isObeyed(value) ? sentence : sentence + " " + notObeyed();
    }

    /** What is said of a setting that {@link Setting#isObeyed} calls false. */
    public String notObeyed() {
        return say("not-obeyed");
    }

    /** What may be written, such as <em>1 to 12</em> or <em>none, knockout, all</em>. */
    public String allowed(Setting setting) {
        Domain domain = setting.domain();
        if (domain instanceof Domain.Whole whole) {
            return say("allowed.whole", "least", whole.least(), "most", whole.most());
        }
        if (domain instanceof Domain.Degrees degrees) {
            return say("allowed.whole", "least", Math.round(degrees.least()), "most", Math.round(degrees.most()));
        }
        if (domain instanceof Domain.Choice choice) {
            return String.join(", ", choice.choices());
        }
        return say("allowed." + ALLOWED.get(domain.getClass()));
    }

    /** What may be written in its field. */
    public String write(Setting setting) {
        return say("write", "allowed", allowed(setting));
    }

    /** Where values of it are published, said beside its field. */
    public String published(Setting setting) {
        return say("published", "example", example(setting));
    }

    /** What the preset has instead. */
    public String presetSays(Setting setting, String value) {
        return say("preset-says", "value", value(setting, value));
    }

    /** What is wrong with a line of the conditions, and what to write instead. */
    public String fault(SettingFault fault) {
        Map<String, Object> data = new HashMap<>();
        data.put("setting", Setting.parse(fault.setting()).map(this::quoted).orElse(fault.setting()));
        data.put("value", fault.value());
        data.put("allowed", fault.allowed());
        if (!fault.allowed().isEmpty()) {
            data.put("least", fault.allowed().get(0));
            data.put("most", fault.allowed().get(fault.allowed().size() - 1));
        }
        return words.sentence(fault.kind().code(), data);
    }

    private String quoted(Setting setting) {
        return setting.code() + " (" + name(setting) + ")";
    }

    /** What goes badly together in these conditions. */
    public String note(ConditionsNote note, Conditions conditions) {
        List<Setting> settings = note.settings();
        Setting second = settings.get(settings.size() - 1);
        Map<String, Object> data = new HashMap<>(note.data());
        data.put("first", "\"" + name(settings.get(0)) + "\"");
        data.put("second", name(second) + ": " + value(second, conditions.value(second)));
        Optional.ofNullable(note.data().get("steps")).ifPresent(steps -> data.put("steps", steps(steps)));
        return words.sentence(note.kind().code(), data);
    }

    private String say(String key, Object... namesAndValues) {
        return words.say("conditions." + key, namesAndValues);
    }

    private static boolean has(String key) {
        return Words.has("conditions." + key);
    }
}
