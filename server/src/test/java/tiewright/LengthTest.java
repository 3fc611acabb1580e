package tiewright;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Classes of at most 200 lines and methods of at most 25, from the first line of the declaration to its last brace; methods of at
 * most four parameters; records of at most eight components, and so many for each of their constructors. What is larger stands in a
 * list with its size and the reason why beside it; the list may only shrink. The bounds are the project's own, no source.
 */
class LengthTest {
    /** What is counted, and how much of it needs no reason. */
    private enum Size {
        CLASS_LINES(200),
        METHOD_LINES(25),
        PARAMETERS(4),
        COMPONENTS(8);

        private final int most;

        Size(int most) {
            this.most = most;
        }
    }

    private static final Path SOURCES = Path.of("src/main/java");
    private static final Path LIST = Path.of("src/test/resources/tiewright/larger-than-usual.txt");

    /** Such as {@code class-lines ledger.Ledger 262: one line for each door}: what, its size, and why. */
    private static final Pattern LINE = Pattern.compile("(\\S+ \\S+) (\\d+): (\\S.*)");

    /** Sizes above the bounds, such as "class-lines ledger.Store"; of overloads the largest. */
    private static final SortedMap<String, Integer> found = new TreeMap<>();

    @BeforeAll
    static void read() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (Stream<Path> files = Files.walk(SOURCES);
                StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            List<Path> java =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(java));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                String room = unit.getPackageName().toString().replaceFirst("^tiewright\\.", "");
                new Ruler(unit, positions).scan(unit, room + ".");
            }
        }
    }

    @Test
    void what_is_larger_than_usual_stands_in_the_list() throws IOException {
        SortedMap<String, Integer> unlisted = new TreeMap<>(found);
        listed().forEach((what, size) -> unlisted.computeIfPresent(what, (same, now) -> now > size ? now : null));
        assertThat(unlisted)
                .as(
                        "larger than a class (200 lines), a method (25 lines, 4 parameters) or a record (8 components) is, or larger"
                                + " than its line in " + LIST.getFileName() + " says: cut it in two")
                .isEmpty();
    }

    @Test
    void the_list_only_shrinks() throws IOException {
        assertThat(listed().keySet())
                .as("no longer larger than usual, or gone: take it out of " + LIST.getFileName())
                .isSubsetOf(found.keySet());
    }

    /** Beside each line, what holds for it and for no other: no reason stands twice, and none is a word or two. */
    @Test
    void every_line_of_the_list_has_its_own_reason_beside_it() throws IOException {
        List<String> reasons = new ArrayList<>();
        for (String line : lines()) {
            assertThat(line).matches(LINE);
            reasons.add(LINE.matcher(line).replaceFirst("$3"));
        }
        assertThat(reasons).allMatch(reason -> reason.split(" ").length >= 5).doesNotHaveDuplicates();
    }

    private static Map<String, Integer> listed() throws IOException {
        return lines().stream()
                .map(LINE::matcher)
                .filter(Matcher::matches)
                .collect(Collectors.toMap(line -> line.group(1), line -> Integer.parseInt(line.group(2))));
    }

    private static List<String> lines() throws IOException {
        return Files.readAllLines(LIST).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
    }

    /** Goes through one file; what it is given is the names of the room and the classes around. */
    private static final class Ruler extends TreeScanner<Void, String> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final Deque<Boolean> inRecord = new ArrayDeque<>();

        Ruler(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
        }

        @Override
        public Void visitClass(ClassTree tree, String around) {
            String name = around + tree.getSimpleName();
            note(Size.CLASS_LINES, name, lines(tree));
            if (tree.getKind() == Tree.Kind.RECORD) {
                note(Size.COMPONENTS, name, components(tree));
            }
            inRecord.push(tree.getKind() == Tree.Kind.RECORD);
            super.visitClass(tree, name + ".");
            inRecord.pop();
            return null;
        }

        @Override
        public Void visitMethod(MethodTree tree, String around) {
            String name = around + tree.getName();
            note(Size.METHOD_LINES, name, lines(tree));
            int parameters = tree.getParameters().size();
            if (tree.getName().contentEquals("<init>") && inRecord.getFirst()) {
                note(Size.COMPONENTS, around.substring(0, around.length() - 1), parameters); // all components or some
            } else {
                note(Size.PARAMETERS, name, parameters);
            }
            return super.visitMethod(tree, around);
        }

        /** A record has no other fields that are not static. */
        private static int components(ClassTree tree) {
            return (int) tree.getMembers().stream()
                    .filter(VariableTree.class::isInstance)
                    .map(VariableTree.class::cast)
                    .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC))
                    .count();
        }

        private int lines(Tree tree) {
            LineMap map = unit.getLineMap();
            long start = positions.getStartPosition(unit, tree);
            long end = positions.getEndPosition(unit, tree);
            return start < 0 || end < 0 // made by the compiler
                    ? 0
                    : (int) (map.getLineNumber(end) - map.getLineNumber(start) + 1);
        }

        private static void note(Size size, String name, int counted) {
            if (counted > size.most) {
                String kind = size.name().toLowerCase(Locale.ROOT).replace('_', '-');
                found.merge(kind + " " + name, counted, Math::max);
            }
        }
    }
}
