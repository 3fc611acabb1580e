package tiewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A result as rows: CSV with exactly the promised columns, or aligned text for people. */
final class Printed {
    private final List<String> header;
    private final List<List<String>> rows = new ArrayList<>();

    Printed(String... header) {
        this.header = List.of(header);
    }

    Printed(List<String> header) {
        this.header = List.copyOf(header);
    }

    void row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell instanceof Double number ? number(number) : String.valueOf(cell));
        }
        rows.add(row);
    }

    void to(PrintWriter out, boolean csv) {
        if (csv) {
            asCsv(out);
        } else {
            asText(out);
        }
        out.flush();
    }

    /** Every digit there is, as a plain decimal. */
    private static String number(double value) {
        return new java.math.BigDecimal(Double.toString(value)).toPlainString();
    }

    private void asCsv(PrintWriter out) {
        try {
            CSVPrinter printer = new CSVPrinter(
                    out, CSVFormat.RFC4180.builder().setRecordSeparator("\n").get());
            printer.printRecord(header);
            printer.printRecords(rows);
            printer.flush();
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    private void asText(PrintWriter out) {
        List<List<String>> all = new ArrayList<>();
        all.add(header.stream().map(name -> name.replace('_', ' ')).toList());
        all.addAll(rows);
        int[] widths = new int[header.size()];
        all.forEach(row -> {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        });
        for (List<String> row : all) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
