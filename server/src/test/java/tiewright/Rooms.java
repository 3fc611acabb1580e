package tiewright;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The two tables of rooms in DEVELOPERS.md: those that compute, then those at the edge. A room is a package path below {@code
 * tiewright}, such as {@code lineup.game}; a package without a row belongs to the row with the longest path that it begins
 * with.
 */
record Rooms(List<Row> rows) {
    private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");
    private static final Pattern HEAD =
            Pattern.compile("\\| room (that computes|at the edge) \\| answers \\| uses \\| libraries \\|");
    private static final Pattern CELLS = Pattern.compile("\\| `([a-z.]+)` \\|[^|]*\\|([^|]*)\\|([^|]*)\\|");
    private static final Pattern NAMED = Pattern.compile("`([a-z0-9.]+)`");

    /**
     * @param uses the rooms whose classes its own may name
     * @param libraries the beginnings of the packages from outside that it may name
     */
    record Row(String room, boolean computes, Set<String> uses, Set<String> libraries) {}

    Rooms {
        rows = List.copyOf(rows);
    }

    static Rooms ofTheGuide() {
        try {
            return read(Files.readAllLines(GUIDE, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** @throws IllegalArgumentException for a row of one of the two tables that cannot be read */
    static Rooms read(List<String> guide) {
        List<Row> rows = new ArrayList<>();
        Optional<Boolean> computes = Optional.empty();
        for (String line : guide) {
            Matcher head = HEAD.matcher(line);
            if (head.matches()) {
                computes = Optional.of(head.group(1).equals("that computes"));
            } else if (!line.startsWith("|")) {
                computes = Optional.empty();
            } else if (computes.isPresent() && !line.startsWith("|---")) {
                rows.add(row(line, computes.get()));
            }
        }
        return new Rooms(rows);
    }

    private static Row row(String line, boolean computes) {
        Matcher cells = CELLS.matcher(line);
        if (!cells.matches()) {
            throw new IllegalArgumentException("a row of the rooms in DEVELOPERS.md that cannot be read: " + line);
        }
        return new Row(cells.group(1), computes, named(cells.group(2)), named(cells.group(3)));
    }

    private static Set<String> named(String cell) {
        Set<String> names = new TreeSet<>();
        NAMED.matcher(cell).results().forEach(name -> names.add(name.group(1)));
        return names;
    }

    List<String> names() {
        return rows.stream().map(Row::room).toList();
    }

    /** The row of a package, such as {@code tiewright.lineup.game}. */
    Optional<Row> of(String packageName) {
        return within(packageName, "tiewright")
                ? rows.stream()
                        .filter(row -> within(packageName, "tiewright." + row.room()))
                        .max(Comparator.comparingInt(row -> row.room().length()))
                : Optional.empty();
    }

    /** {@code java.util.stream} is within {@code java.util}, and so is {@code java.util}. */
    static boolean within(String packageName, String path) {
        return (packageName + ".").startsWith(path + ".");
    }
}
