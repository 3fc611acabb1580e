package tiewright.plainfiles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A list of people as somebody copied it from a spreadsheet, a file or a message: names alone, or columns in any order.
 *
 * @param rows without blank ones and without the line of headings
 * @param columns what each column seems to hold, a guess to be shown before anything is made of it
 * @param broken the line from which on it cannot be read; empty where all could be
 */
public record PastedList(List<Row> rows, List<Holds> columns, OptionalLong broken) {
    private static final char[] APART = {'\t', ';', ','};

    /** What a column holds. */
    public enum Holds {
        CLUB,
        NAME,
        FIRST_NAME,
        FAMILY_NAME,
        RANK,
        BORN,
        PLAYS,
        NOTHING;

        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** A row and the line it begins on. */
    public record Row(long line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** What stands in a column; empty where the row is shorter. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    public PastedList {
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
    }

    /** @param clubs codes and names of the clubs that are entered already: a column of these is that of the clubs */
    public static PastedList read(String text, List<String> clubs) {
        char apart = apart(text);
        List<Row> rows = new ArrayList<>();
        OptionalLong broken = OptionalLong.empty();
        long line = 1;
        try (CSVParser parser = CSVParser.parse(
                text, CSVFormat.RFC4180.builder().setDelimiter(apart).get())) {
            for (CSVRecord record : parser) {
                List<String> cells = record.stream()
                        .map(cell -> Cells.unguarded(CsvTable.bare(cell)))
                        .toList();
                if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
                    rows.add(new Row(line, cells));
                }
                line = parser.getCurrentLineNumber() + 1; // a value may run over several lines
            }
        } catch (IOException | UncheckedIOException stray) {
            broken = OptionalLong.of(line);
        }
        ColumnGuess guess = new ColumnGuess(rows, clubs, apart == ',');
        return new PastedList(guess.isHeaded() ? rows.subList(1, rows.size()) : rows, guess.columns(), broken);
    }

    /** What most lines have between their values; where there is nothing of the kind, a line is one value. */
    private static char apart(String text) {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        for (char mark : APART) {
            if (lines.stream().filter(line -> line.indexOf(mark) >= 0).count() * 2 > lines.size()) {
                return mark;
            }
        }
        return APART[0];
    }
}
