package tiewright.plainfiles;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tiewright.event.Refusal;

/**
 * A CSV file read as text, with the faults of its form.
 *
 * @param header the first row
 * @param rows every other row, by column
 * @param isWhole it could be read to its end
 */
public record CsvTable(String file, List<String> header, List<Row> rows, List<FolderFault> faults, boolean isWhole) {

    /** A row and the line it begins on. */
    public record Row(String file, long line, Map<String, String> cells, List<String> inOrder) {
        public Optional<String> cell(String column) {
            return Optional.ofNullable(cells.get(column)).filter(text -> !text.isEmpty());
        }

        public FolderFault fault(String column, Refusal reason) {
            return new FolderFault(file, line, column, reason);
        }
    }

    /** Reads any CSV file; a byte order mark is accepted. */
    public static CsvTable read(Path path) {
        String file = path.getFileName().toString();
        try {
            return text(Files.readAllBytes(path))
                    .map(text -> of(file, text))
                    .orElseGet(() -> new CsvTable(file, List.of(), List.of(), List.of(notText(file)), false));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A table that is there as text already. */
    static CsvTable of(String file, String text) {
        List<FolderFault> faults = new ArrayList<>();
        List<String> header = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        long line = 1;
        boolean isWhole = true;
        try (Reader in = new StringReader(text);
                CSVParser parser = CSVFormat.RFC4180.parse(in)) {
            for (CSVRecord record : parser) {
                // a blank line carries nothing
                boolean blank = record.size() == 1 && record.get(0).isEmpty();
                if (header.isEmpty()) {
                    record.forEach(name -> header.add(bare(name)));
                } else if (!blank) {
                    rows.add(row(file, header, record, line, faults));
                }
                line = parser.getCurrentLineNumber() + 1; // a value may run over several lines
            }
        } catch (IOException | UncheckedIOException broken) {
            isWhole = false;
            faults.add(new FolderFault(file, line, "", Refusal.of("files.quote-open")));
        }
        if (header.isEmpty()) {
            faults.add(new FolderFault(file, 1, "", Refusal.of("files.no-header")));
        }
        return new CsvTable(file, List.copyOf(header), rows, faults, isWhole);
    }

    private static Row row(String file, List<String> header, CSVRecord record, long line, List<FolderFault> faults) {
        Map<String, String> cells = new LinkedHashMap<>();
        List<String> inOrder = new ArrayList<>();
        for (int i = 0; i < record.size(); i++) {
            String cell = Cells.unguarded(bare(record.get(i)));
            inOrder.add(cell);
            if (i < header.size()) {
                cells.put(header.get(i), cell);
            }
        }
        if (record.size() != header.size()) {
            faults.add(new FolderFault(
                    file,
                    line,
                    "",
                    Refusal.of("files.too-many-values")
                            .with("values", record.size())
                            .with("columns", header.size())));
        }
        return new Row(file, line, cells, inOrder);
    }

    /** A value without the blanks around it, those included that nobody sees: no-break spaces, joiners, marks of direction. */
    static String bare(String value) {
        int from = 0;
        int to = value.length();
        while (from < to && isAir(value.charAt(from))) {
            from++;
        }
        while (from < to && isAir(value.charAt(to - 1))) {
            to--;
        }
        return value.substring(from, to);
    }

    private static boolean isAir(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.getType(c) == Character.FORMAT;
    }

    /** What the bytes of a file say, without a byte order mark; empty if they are no UTF-8. */
    static Optional<String> text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
    }

    static FolderFault notText(String file) {
        return new FolderFault(file, 1, "", Refusal.of("files.not-utf8"));
    }
}
