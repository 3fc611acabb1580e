package tiewright;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The two journeys of DEVELOPERS.md can be walked: each class that stands there knows what stands under it. */
class JourneysTest {
    private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");
    private static final Path TEMPLATES = Path.of("..", "web", "templates", "pages");
    private static final String FROM = "## Two journeys";
    private static final Pattern STEP = Pattern.compile("( *)- `((?:[a-z]+\\.)+[A-Z]\\w*)`.*");
    private static final Pattern TEMPLATE = Pattern.compile("`(\\w+\\.jte)`");
    private static final int MOST_CLASSES = 9;

    /** @param depth how far in it stands: what stands further in is known to the one that it stands under */
    private record Step(int depth, JavaClass type) {}

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("tiewright");

    @Test
    void each_journey_takes_nine_classes_at_most_from_a_page_to_a_page() throws IOException {
        List<List<Step>> journeys = journeys();
        assertThat(journeys).hasSize(2);
        for (List<Step> journey : journeys) {
            assertThat(journey).hasSizeBetween(5, MOST_CLASSES);
            assertThat(journey.stream().map(Step::type)).doesNotHaveDuplicates();
            assertThat(List.of(journey.get(0), last(journey)))
                    .as("a journey begins and ends with a page")
                    .allMatch(step -> step.depth() == 0 && step.type().isAssignableTo(tiewright.http.visit.Page.class));
        }
    }

    @Test
    void each_class_knows_the_next_that_stands_further_in() throws IOException {
        for (List<Step> journey : journeys()) {
            for (int i = 1; i < journey.size(); i++) {
                Step step = journey.get(i);
                List<Step> before = journey.subList(0, i);
                if (step.depth() == 0) {
                    assertThat(before)
                            .as("%s goes on from one of these", step.type().getName())
                            .anyMatch(one -> knows(step.type(), one.type()));
                } else {
                    Step over = over(before, step);
                    assertThat(knows(over.type(), step.type()))
                            .as(
                                    "%s knows %s",
                                    over.type().getName(), step.type().getName())
                            .isTrue();
                }
            }
        }
    }

    @Test
    void the_templates_that_are_named_are_there() throws IOException {
        Matcher named = TEMPLATE.matcher(String.join("\n", section()));
        int found = 0;
        while (named.find()) {
            assertThat(TEMPLATES.resolve(named.group(1))).exists();
            found++;
        }
        assertThat(found).isGreaterThanOrEqualTo(4);
    }

    /** The step that another one stands under: the nearest before it that stands less far in. */
    private static Step over(List<Step> before, Step step) {
        return IntStream.iterate(before.size() - 1, i -> i - 1)
                .limit(before.size())
                .mapToObj(before::get)
                .filter(one -> one.depth() < step.depth())
                .findFirst()
                .orElseThrow();
    }

    private static boolean knows(JavaClass one, JavaClass other) {
        return CLASSES.stream()
                .filter(type -> type.equals(one) || type.getName().startsWith(one.getName() + "$"))
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .anyMatch(use -> use.getTargetClass().equals(other));
    }

    private static Step last(List<Step> journey) {
        List<Step> outermost =
                journey.stream().filter(step -> step.depth() == 0).toList();
        return outermost.get(outermost.size() - 1);
    }

    /** Each list of the section is a journey. */
    private static List<List<Step>> journeys() throws IOException {
        List<List<Step>> journeys = new ArrayList<>();
        boolean listed = false;
        for (String line : section()) {
            Matcher step = STEP.matcher(line);
            if (step.matches()) {
                if (!listed) {
                    journeys.add(new ArrayList<>());
                }
                journeys.get(journeys.size() - 1)
                        .add(new Step(step.group(1).length() / 2, CLASSES.get("tiewright." + step.group(2))));
            }
            listed = step.matches() || line.startsWith(" ");
        }
        return journeys;
    }

    private static List<String> section() throws IOException {
        List<String> lines = Files.readAllLines(GUIDE);
        int from = lines.indexOf(FROM);
        assertThat(from).as(FROM).isNotNegative();
        List<String> rest = lines.subList(from + 1, lines.size());
        return rest.stream().takeWhile(line -> !line.startsWith("## ")).toList();
    }
}
