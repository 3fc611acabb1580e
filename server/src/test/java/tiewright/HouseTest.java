package tiewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The walls of the house: which room knows which, and which library, is what the tables of DEVELOPERS.md say, no more and no
 * less.
 */
class HouseTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("tiewright");

    private static final Rooms GUIDE = Rooms.ofTheGuide();

    private static final Map<String, List<JavaClass>> BY_ROOM = CLASSES.stream()
            .filter(type -> GUIDE.of(type.getPackageName()).isPresent())
            .collect(Collectors.groupingBy(
                    type -> GUIDE.of(type.getPackageName()).orElseThrow().room()));

    /** For everybody: what every Java has and what reads and keeps nothing, and the marks for null. */
    private static final Set<String> COMMON =
            Set.of("java.lang", "java.util", "java.time", "java.math", "java.text", "org.jspecify.annotations");

    @Test
    void every_package_has_a_room_in_the_guide() {
        Set<String> homeless = CLASSES.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> GUIDE.of(name).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(homeless)
                .as("packages that no row of DEVELOPERS.md takes in")
                .isEmpty();
    }

    @Test
    void every_room_of_the_guide_stands_once_and_has_classes() {
        Set<String> packages = CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
        assertThat(GUIDE.names()).doesNotHaveDuplicates().hasSizeGreaterThan(15);
        assertThat(GUIDE.names().stream().filter(room -> !packages.contains("tiewright." + room)))
                .as("rows of DEVELOPERS.md without a class")
                .isEmpty();
    }

    /** Read from the top, each row rests on those above it, so no arrow can run back. */
    @Test
    void a_row_names_only_rooms_above_it() {
        List<String> names = GUIDE.names();
        for (Rooms.Row row : GUIDE.rows()) {
            assertThat(names.subList(0, names.indexOf(row.room())))
                    .as("the rows of DEVELOPERS.md above %s", row.room())
                    .containsAll(row.uses());
        }
    }

    @Test
    void a_room_uses_exactly_the_rooms_of_its_row() {
        Map<String, String> arrows = new TreeMap<>();
        Set<String> allowed = new TreeSet<>();
        for (Rooms.Row row : GUIDE.rows()) {
            row.uses().forEach(other -> allowed.add(row.room() + " uses " + other));
            uses(
                    row,
                    use -> GUIDE.of(use.getTargetClass().getPackageName())
                            .filter(other -> !other.equals(row))
                            .ifPresent(other -> arrows.putIfAbsent(row.room() + " uses " + other.room(), where(use))));
        }
        compare(arrows, allowed);
    }

    @Test
    void a_room_uses_exactly_the_libraries_of_its_row() {
        Map<String, String> arrows = new TreeMap<>();
        Set<String> allowed = new TreeSet<>();
        for (Rooms.Row row : GUIDE.rows()) {
            row.libraries().forEach(library -> allowed.add(row.room() + " uses " + library));
            uses(
                    row,
                    use -> outside(use.getTargetClass().getBaseComponentType())
                            .ifPresent(name ->
                                    arrows.putIfAbsent(row.room() + " uses " + library(row, name), where(use))));
        }
        compare(arrows, allowed);
    }

    @Test
    void a_room_that_computes_asks_for_no_clock_file_or_chance_and_not_for_the_machine_s_language() {
        Map<String, Set<String>> asks = new TreeMap<>();
        CLASSES.stream()
                .filter(type -> GUIDE.of(type.getPackageName())
                        .filter(Rooms.Row::computes)
                        .isPresent())
                .forEach(type -> asks.put(type.getName(), OuterWorld.of(type)));
        assertThat(asks).hasSizeGreaterThan(400);
        asks.values().removeIf(Set::isEmpty);
        assertThat(asks).as("give it to them as an argument").isEmpty();
    }

    private static void uses(Rooms.Row row, Consumer<Dependency> each) {
        BY_ROOM.getOrDefault(row.room(), List.of())
                .forEach(type -> type.getDirectDependenciesFromSelf().forEach(each));
    }

    private static String where(Dependency use) {
        return use.getOriginClass().getName() + " names " + use.getTargetClass().getName();
    }

    /** Its package, if it comes from outside the project and is not for everybody. */
    private static Optional<String> outside(JavaClass type) {
        return Optional.of(type.getPackageName())
                .filter(name -> !type.isPrimitive() && !Rooms.within(name, "tiewright"))
                .filter(name -> COMMON.stream().noneMatch(common -> Rooms.within(name, common)));
    }

    /** The library of the row that the package belongs to, or the package itself. */
    private static String library(Rooms.Row row, String packageName) {
        return row.libraries().stream()
                .filter(path -> Rooms.within(packageName, path))
                .findFirst()
                .orElse(packageName);
    }

    private static void compare(Map<String, String> arrows, Set<String> allowed) {
        Map<String, String> more = new TreeMap<>(arrows);
        more.keySet().removeAll(allowed);
        assertThat(more)
                .as(
                        "arrows that DEVELOPERS.md does not name: turn them round, or write them down if the design wants them")
                .isEmpty();
        Set<String> idle = new TreeSet<>(allowed);
        idle.removeAll(arrows.keySet());
        assertThat(idle)
                .as("arrows of DEVELOPERS.md that no class needs: cross them out")
                .isEmpty();
    }

    /**
     * Pages are made from what one viewer may know. The whole event is held by the answers, which look for whom they are, by the
     * service itself, which follows it, and by decisions, to which it is given.
     */
    @Test
    void pages_never_hold_the_whole_event() {
        noClasses()
                .that()
                .resideInAPackage("tiewright.http..")
                .and()
                .resideOutsideOfPackages("tiewright.http", "tiewright.http.answers")
                .and()
                .areNotAssignableTo(tiewright.event.Decision.class)
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("tiewright.event.Event")
                .check(CLASSES);
    }
}
