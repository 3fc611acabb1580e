package tiewright.plainfiles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A CSV file while it is written: RFC 4180 with line feeds. */
final class CsvText {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm");
    private final List<List<String>> rows = new ArrayList<>();

    CsvText(List<String> header) {
        rows.add(List.copyOf(header));
    }

    CsvText(PlainFile file) {
        this(file.columns());
    }

    /** A row; an empty optional is an empty cell. */
    void row(Object... cells) {
        rows.add(Arrays.stream(cells).map(CsvText::cell).toList());
    }

    boolean isEmpty() {
        return rows.size() == 1;
    }

    private static String cell(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(CsvText::cell).orElse("");
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? Cells.plain(number.getAsDouble()) : "";
        }
        if (value instanceof LocalTime time) {
            return HOUR.format(time);
        }
        return value instanceof Double number ? Cells.plain(number) : Cells.guarded(value.toString());
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(
                text, CSVFormat.RFC4180.builder().setRecordSeparator("\n").get())) {
            printer.printRecords(rows);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }
}
