package tiewright.conditions;

import java.util.List;
import java.util.stream.Stream;

/** Every setting with its value and that of the preset, in the order of the headings, as a file says them. */
public final class ConditionsLines {
    private ConditionsLines() {}

    /** @param preset what the preset says instead, for as many rubbers */
    public record Line(Setting setting, String value, String preset) {}

    public static List<Line> of(Conditions conditions) {
        return Stream.of(Heading.values())
                .flatMap(heading -> Setting.under(heading).stream())
                .map(setting -> new Line(
                        setting,
                        written(conditions, setting, conditions.value(setting)),
                        written(conditions, setting, setting.of(conditions.base()))))
                .toList();
    }

    /** What holds for all rubbers alike is said of each of them. */
    private static String written(Conditions conditions, Setting setting, String value) {
        if (setting == Setting.RUBBER_KINDS && value.equals(RubberKind.OPEN.code())) {
            return RubberKinds.OPEN.code(conditions.rubbers());
        }
        return setting == Setting.RUBBER_WEIGHTS && value.equals(RubberWeights.NONE_GIVEN)
                ? RubberWeights.EQUAL.code(conditions.rubbers())
                : value;
    }
}
