package tiewright.plainfiles;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.plainfiles.PastedList.Holds;
import tiewright.plainfiles.PastedList.Row;

/** Guesses what the columns of a list hold: by their headings where it has such, else by what stands in them. */
final class ColumnGuess {
    private static final Map<String, Holds> HEADINGS = Map.ofEntries(
            entry("club", Holds.CLUB),
            entry("team", Holds.CLUB),
            entry("name", Holds.NAME),
            entry("full name", Holds.NAME),
            entry("player", Holds.NAME),
            entry("players", Holds.NAME),
            entry("first name", Holds.FIRST_NAME),
            entry("first", Holds.FIRST_NAME),
            entry("given name", Holds.FIRST_NAME),
            entry("forename", Holds.FIRST_NAME),
            entry("last name", Holds.FAMILY_NAME),
            entry("last", Holds.FAMILY_NAME),
            entry("family name", Holds.FAMILY_NAME),
            entry("surname", Holds.FAMILY_NAME),
            entry("rank", Holds.RANK),
            entry("no", Holds.RANK),
            entry("no.", Holds.RANK),
            entry("#", Holds.RANK),
            entry("position", Holds.RANK),
            entry("order", Holds.RANK),
            entry("born", Holds.BORN),
            entry("born_year", Holds.BORN),
            entry("birth year", Holds.BORN),
            entry("year of birth", Holds.BORN),
            entry("plays", Holds.PLAYS),
            entry("plays in", Holds.PLAYS));

    private final List<Row> rows;
    private final Set<String> clubs;
    private final boolean familyFirst;
    private final boolean headed;

    /** @param familyFirst of two columns of words the first is the family name: "Berg, Anna" */
    ColumnGuess(List<Row> rows, List<String> clubs, boolean familyFirst) {
        this.rows = rows;
        this.clubs = clubs.stream().map(ColumnGuess::plain).collect(Collectors.toSet());
        this.familyFirst = familyFirst;
        this.headed =
                !rows.isEmpty() && rows.get(0).cells().stream().anyMatch(cell -> HEADINGS.containsKey(plain(cell)));
    }

    private static String plain(String cell) {
        return cell.toLowerCase(Locale.ROOT);
    }

    boolean isHeaded() {
        return headed;
    }

    List<Holds> columns() {
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        List<Holds> columns = new ArrayList<>(Collections.nCopies(width, Holds.NOTHING));
        if (headed) {
            IntStream.range(0, width)
                    .forEach(column -> put(
                            columns,
                            column,
                            HEADINGS.getOrDefault(plain(rows.get(0).cell(column)), Holds.NOTHING)));
            // a file of players has their codes under "player" and what they are called under "name"
            IntStream.range(0, width)
                    .filter(column -> plain(rows.get(0).cell(column)).equals("name"))
                    .forEach(column -> {
                        Collections.replaceAll(columns, Holds.NAME, Holds.NOTHING);
                        columns.set(column, Holds.NAME);
                    });
        } else {
            byContent(columns);
        }
        return columns;
    }

    private void byContent(List<Holds> columns) {
        List<Integer> words = new ArrayList<>();
        for (int column = 0; column < columns.size(); column++) {
            List<String> values = values(column);
            if (mostMatch(values, "(19|20)[0-9]{2}")) {
                put(columns, column, Holds.BORN);
            } else if (mostMatch(values, "[0-9]{1,2}[.)]?")) {
                put(columns, column, Holds.RANK);
            } else if (mostMatch(values, "(?i)(wo)?men(['’]s)?")) {
                put(columns, column, Holds.PLAYS);
            } else if (isOfClubs(values)) {
                put(columns, column, Holds.CLUB);
            } else if (!values.isEmpty()) {
                words.add(column);
            }
        }
        if (words.size() == 2) {
            columns.set(words.get(familyFirst ? 1 : 0), Holds.FIRST_NAME);
            columns.set(words.get(familyFirst ? 0 : 1), Holds.FAMILY_NAME);
        } else if (!words.isEmpty()) {
            columns.set(words.get(0), Holds.NAME);
        }
    }

    /** Each thing stands in one column: the first that seems to hold it. */
    private static void put(List<Holds> columns, int column, Holds holds) {
        columns.set(column, columns.contains(holds) ? Holds.NOTHING : holds);
    }

    private List<String> values(int column) {
        return rows.stream()
                .map(row -> row.cell(column))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }

    /** More than half: what a slip of the keyboard made of the others is said beside them. */
    private static boolean mostMatch(List<String> values, String pattern) {
        return values.stream().filter(value -> value.matches(pattern)).count() * 2 > values.size();
    }

    /** All known already, or few that come again and again. */
    private boolean isOfClubs(List<String> values) {
        Set<String> different = values.stream().map(ColumnGuess::plain).collect(Collectors.toSet());
        return !values.isEmpty() && (clubs.containsAll(different) || different.size() * 3 <= values.size());
    }
}
