package tiewright.conditions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A setting that counts as acted on changes what happens, for each of its values: in a small situation, asked through public
 * doors, no other choice has the same outcome, and each number another one than the numbers beside it.
 */
class ObeyedTest {
    /**
     * Values of which no situation shows that they change anything. Both are the one way that the software knows, whatever is
     * chosen: the other choices of their setting are printed for people to apply. This list only shrinks.
     */
    private static final Set<String> UNPROVEN = Set.of("exchange=sealed-together", "both_short=shrink-target");

    /** Ways to score that differ in one thing each. */
    private static final List<String> SCORINGS =
            List.of("side-out-11", "side-out-15", "rally-11", "rally-15", "rally-21", "rally-21-cap-30");

    /** Values that are tried besides those of the presets, where they are no list. */
    private static final Map<Class<?>, List<String>> MORE = Map.of(
            Domain.Scoring.class, SCORINGS,
            Domain.Points.class, List.of("3/1/0", "3/1/1", "rubbers", "games+5/3/0", "rubbers+2/1/0", "games+7/2/1"),
            Domain.Kinds.class, List.of("women;men;mixed;open", "women;women;men;men", "mixed;mixed;mixed;mixed"),
            Domain.Weights.class, List.of("6/4/3", "3/1/1/1", "5/4/3/2/1"),
            Domain.Unplayed.class, List.of("2/0", "6/0", "6/1"),
            Domain.Level.class, List.of("lots"));

    @Test
    void each_value_of_a_setting_that_is_acted_on_changes_what_happens() {
        Set<String> unproven = new TreeSet<>();
        for (Setting setting : Setting.values()) {
            if (setting.isObeyed() && setting.domain().choices().size() != 1) { // one choice is no choice
                unproven.addAll(unproven(setting));
            }
        }
        assertThat(unproven)
                .as("acted on, but no situation shows it; one that is shown now leaves the list")
                .isEqualTo(new TreeSet<>(UNPROVEN));
    }

    private static Set<String> unproven(Setting setting) {
        List<String> values = values(setting);
        List<Object> outcomes = new ArrayList<>();
        Function<Conditions, Object> situation = Situations.of(setting).orElse(conditions -> "no situation");
        for (String value : values) {
            outcomes.add(situation.apply(Conditions.of(Preset.CLUB_DAY).with(setting, value)));
        }
        Set<String> unproven = new TreeSet<>();
        for (int i = 0; i < values.size(); i++) {
            int at = i;
            boolean same = others(setting, at, values.size())
                    .anyMatch(other -> outcomes.get(other).equals(outcomes.get(at)));
            if (same || values.size() == 1) {
                unproven.add(setting.code() + "=" + values.get(at));
            }
        }
        return unproven;
    }

    /** With which values one is compared: a number with its neighbours, a choice with every other. */
    private static IntStream others(Setting setting, int at, int size) {
        boolean isNumber = setting.domain() instanceof Domain.Whole || setting.domain() instanceof Domain.Degrees;
        return IntStream.range(0, size).filter(other -> isNumber ? Math.abs(other - at) == 1 : other != at);
    }

    private static List<String> values(Setting setting) {
        if (setting == Setting.REST_MINUTES) { // a plan moves in steps of its own, so numbers further apart
            return IntStream.rangeClosed(0, 8)
                    .mapToObj(i -> Integer.toString(30 * i))
                    .toList();
        }
        if (setting.domain() instanceof Domain.Whole whole) {
            return IntStream.rangeClosed(whole.least(), whole.most())
                    .mapToObj(Integer::toString)
                    .toList();
        }
        if (setting.domain() instanceof Domain.Degrees degrees) {
            return IntStream.rangeClosed((int) (10 * degrees.least()), (int) (10 * degrees.most()))
                    .mapToObj(tenths -> tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10))
                    .toList();
        }
        if (!setting.domain().choices().isEmpty()) {
            return setting.domain().choices().stream().filter(setting::isObeyed).toList();
        }
        return Stream.concat(
                        Arrays.stream(Preset.values()).map(setting::of),
                        Objects.requireNonNull(MORE.get(setting.domain().getClass())).stream())
                .distinct()
                .toList();
    }

    @Test
    void what_the_presets_say_is_among_the_values_that_are_tried() {
        for (Setting setting : Setting.values()) {
            for (Preset preset : Preset.values()) {
                String value = setting.of(preset);
                boolean isTried = setting.isObeyed(value) && setting != Setting.REST_MINUTES;
                assertThat(!isTried || values(setting).contains(value))
                        .as("%s of %s", setting.code(), preset)
                        .isTrue();
            }
        }
    }

    @Test
    void a_setting_that_is_not_obeyed_has_no_obeyed_value() {
        for (Setting setting : Setting.values()) {
            if (!setting.isObeyed()) {
                assertThat(setting.domain().choices()).as(setting.code()).noneMatch(setting::isObeyed);
            }
        }
        assertThat(Setting.EXCHANGE.isObeyed("sealed-together")).isTrue();
        assertThat(Setting.EXCHANGE.isObeyed("home-first")).isFalse();
    }
}
