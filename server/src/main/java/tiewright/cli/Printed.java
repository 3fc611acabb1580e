package tiewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A result as rows: CSV with exactly the promised columns, or aligned text for people. */
final class Printed {
    private final List<String> header;
    /** For people: a chance to a hundredth of a per cent says more than anybody can know of it. */
    private static final int DIGITS_IN_TEXT = 4;

    private final List<List<Object>> rows = new ArrayList<>();

    Printed(String... header) {
        this.header = List.of(header);
    }

    Printed(List<String> header) {
        this.header = List.copyOf(header);
    }

    void row(Object... cells) {
        rows.add(List.of(cells));
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
    private static String exact(Object cell) {
        return cell instanceof Double number
                ? new BigDecimal(Double.toString(number)).toPlainString()
                : String.valueOf(cell);
    }

    private static String rounded(Object cell) {
        return cell instanceof Double number
                ? BigDecimal.valueOf(number)
                        .setScale(DIGITS_IN_TEXT, RoundingMode.HALF_EVEN)
                        .toPlainString()
                : String.valueOf(cell);
    }

    private void asCsv(PrintWriter out) {
        try {
            CSVPrinter printer = new CSVPrinter(
                    out, CSVFormat.RFC4180.builder().setRecordSeparator("\n").get());
            printer.printRecord(header);
            for (List<Object> row : rows) {
                printer.printRecord(row.stream().map(Printed::exact).toList());
            }
            printer.flush();
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    private void asText(PrintWriter out) {
        List<List<String>> all = new ArrayList<>();
        all.add(header.stream().map(name -> name.replace('_', ' ')).toList());
        rows.forEach(row -> all.add(row.stream().map(Printed::rounded).toList()));
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
