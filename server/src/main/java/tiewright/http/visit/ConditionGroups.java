package tiewright.http.visit;

import java.util.Arrays;
import java.util.List;
import tiewright.conditions.Conditions;
import tiewright.conditions.Heading;
import tiewright.conditions.Setting;
import tiewright.http.views.ConditionsView;
import tiewright.wording.ConditionsWords;
import tiewright.wording.Words;

/** The conditions of play under their printed headings. */
public final class ConditionGroups {
    private ConditionGroups() {}

    public static List<ConditionsView.Group> of(Words words, Conditions conditions) {
        ConditionsWords said = new ConditionsWords(words);
        return Arrays.stream(Heading.values())
                .map(heading -> new ConditionsView.Group(
                        heading.number() + ". " + said.heading(heading),
                        Setting.under(heading).stream()
                                .map(setting -> line(said, conditions, setting))
                                .toList()))
                .toList();
    }

    private static ConditionsView.Line line(ConditionsWords words, Conditions conditions, Setting setting) {
        return new ConditionsView.Line(
                words.name(setting),
                words.value(setting, conditions.value(setting)),
                conditions.differences().containsKey(setting),
                !setting.isObeyed());
    }
}
