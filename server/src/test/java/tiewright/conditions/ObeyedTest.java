package tiewright.conditions;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No setting claims that the software acts on it unless a room that works something out or decides something reads it. Where
 * only one value is acted on there is nothing to read: the software knows that one way.
 */
class ObeyedTest {
    private static final List<String> ROOMS =
            List.of("event", "standings", "draw", "sheet", "desk", "setup", "correction", "timetable", "plainfiles");

    /** Read by the draw's own decisions, which come with the room {@code setup}; nothing is left out once that is there. */
    private static final Set<String> OF_THE_DRAW = Set.of("drawSeparation", "seeding");

    @Test
    void every_setting_said_to_be_obeyed_is_read_by_a_room_that_acts() {
        JavaClasses classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(ROOMS.stream().map(room -> "tiewright." + room).toList());
        Set<String> read = classes.stream().flatMap(ObeyedTest::reads).collect(Collectors.toSet());
        Set<String> claimed = new TreeSet<>();
        for (Setting setting : Setting.values()) {
            long values = setting.domain().choices().stream()
                    .filter(setting::isObeyed)
                    .count();
            if (setting.isObeyed() && values != 1) {
                claimed.add(accessor(setting));
            }
        }
        if (classes.stream().noneMatch(room -> room.getPackageName().equals("tiewright.setup"))) {
            claimed.removeAll(OF_THE_DRAW);
        }
        assertThat(read).as("settings that some room reads").containsAll(claimed);
    }

    /** What it reads of the conditions: the typed value, or the plain one by its setting. */
    private static Stream<String> reads(JavaClass room) {
        Stream<String> typed = room.getMethodCallsFromSelf().stream()
                .filter(call -> call.getTargetOwner().isEquivalentTo(Conditions.class))
                .map(call -> call.getTarget().getName());
        Stream<String> plain = room.getFieldAccessesFromSelf().stream()
                .filter(access -> access.getTargetOwner().isEquivalentTo(Setting.class))
                .flatMap(access ->
                        Setting.parse(access.getTarget().getName().toLowerCase(java.util.Locale.ROOT)).stream())
                .map(ObeyedTest::accessor);
        return Stream.concat(typed, plain);
    }

    /** {@code MAX_RUBBERS_PER_PLAYER} is read by {@code maxRubbersPerPlayer()}. */
    private static String accessor(Setting setting) {
        StringBuilder name = new StringBuilder();
        for (String word : setting.code().split("_")) {
            name.append(name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return name.toString();
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
