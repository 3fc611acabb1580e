package tiewright.plainfiles;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import tiewright.event.Codes;

/** Reads single values of rows and collects what is wrong with them. Every reading of an empty cell is empty. */
final class Cells {
    /**
     * A text that a spreadsheet would reckon, and so run: it begins with one of = + @, or with - and is no number. An apostrophe
     * before it makes it a text there.
     */
    private static final Pattern RECKONED = Pattern.compile("'*(?:[=+@]|-(?![0-9.]*$))[\\s\\S]*");

    /** Names and other words: as much as the ledger keeps. */
    static final int LONGEST_TEXT = 200;

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm");
    private final List<FolderFault> faults = new ArrayList<>();

    List<FolderFault> faults() {
        return faults;
    }

    void fault(CsvTable.Row row, String column, String reason) {
        faults.add(row.fault(column, reason));
    }

    /** As it stands in a file. */
    static String guarded(String text) {
        return RECKONED.matcher(text).matches() ? "'" + text : text;
    }

    /** As it was before it was written to a file. */
    static String unguarded(String cell) {
        return cell.startsWith("'") && RECKONED.matcher(cell).matches() ? cell.substring(1) : cell;
    }

    Optional<String> needed(CsvTable.Row row, String column) {
        Optional<String> text = row.cell(column);
        if (text.isEmpty()) {
            fault(row, column, "this value is missing");
        }
        return text;
    }

    /** Words on one line. */
    Optional<String> text(CsvTable.Row row, String column) {
        Optional<String> text = row.cell(column);
        if (text.filter(words -> words.length() > LONGEST_TEXT).isPresent()) {
            fault(row, column, "this is longer than " + LONGEST_TEXT + " characters");
            return Optional.empty();
        }
        if (text.filter(words -> words.chars().anyMatch(Character::isISOControl))
                .isPresent()) {
            fault(row, column, "this must stand on one line, without tabs or other control characters");
            return Optional.empty();
        }
        return text;
    }

    Optional<String> textNeeded(CsvTable.Row row, String column) {
        return needed(row, column).flatMap(any -> text(row, column));
    }

    Optional<String> code(CsvTable.Row row, String column) {
        return needed(row, column).filter(text -> isCode(row, column, text));
    }

    Optional<String> codeIfAny(CsvTable.Row row, String column) {
        return row.cell(column).filter(text -> isCode(row, column, text));
    }

    private boolean isCode(CsvTable.Row row, String column, String text) {
        if (!Codes.isCode(text)) {
            fault(
                    row,
                    column,
                    "\"" + text + "\" is no code: use 1 to " + Codes.LONGEST + " characters without a comma");
            return false;
        }
        return true;
    }

    /** A whole number from least to most; a fault when it is not. */
    OptionalInt whole(CsvTable.Row row, String column, int least, int most) {
        Optional<String> text = row.cell(column);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (text.get().matches("[0-9]{1,6}")) {
            int number = Integer.parseInt(text.get());
            if (number >= least && number <= most) {
                return OptionalInt.of(number);
            }
        }
        fault(row, column, "\"" + text.get() + "\" is not a whole number from " + least + " to " + most);
        return OptionalInt.empty();
    }

    OptionalInt wholeNeeded(CsvTable.Row row, String column, int least, int most) {
        return needed(row, column).isEmpty() ? OptionalInt.empty() : whole(row, column, least, most);
    }

    /** A number such as {@code -1.5}. */
    OptionalDouble number(CsvTable.Row row, String column, double least, double most) {
        Optional<String> text = row.cell(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (text.get().matches("[+-]?[0-9]{1,3}(\\.[0-9]{1,9})?")) {
            double number = Double.parseDouble(text.get());
            if (number >= least && number <= most) {
                return OptionalDouble.of(number);
            }
        }
        fault(
                row,
                column,
                "\"" + text.get() + "\" is not a number from " + plain(least) + " to " + plain(most)
                        + ", with a decimal point");
        return OptionalDouble.empty();
    }

    /** A standard deviation: more than 0, for with none at all no game could ever change the judgement. */
    OptionalDouble doubt(CsvTable.Row row, String column, double most) {
        OptionalDouble number = number(row, column, 0, most);
        if (number.isPresent() && number.getAsDouble() == 0) {
            fault(
                    row,
                    column,
                    "the doubt is more than 0 and at most " + plain(most)
                            + ": nobody is quite sure, so 0 cannot stand");
            return OptionalDouble.empty();
        }
        return number;
    }

    Optional<LocalTime> time(CsvTable.Row row, String column) {
        return parsed(row, column, "is not a time such as 13:20", text -> LocalTime.parse(text, HOUR));
    }

    /** The two ends of a span of time; a fault when it ends before it begins. */
    void span(CsvTable.Row row, String from, Optional<LocalTime> begin, String until, Optional<LocalTime> end) {
        if (begin.isPresent() && end.isPresent() && !begin.get().isBefore(end.get())) {
            fault(row, until, until + " " + end.get() + " is not after " + from + " " + begin.get());
        }
    }

    Optional<LocalDate> date(CsvTable.Row row, String column) {
        return parsed(row, column, "is not a date such as 2026-05-30", LocalDate::parse);
    }

    Optional<ZoneId> zone(CsvTable.Row row, String column) {
        return parsed(row, column, "is not a time zone such as Europe/Lisbon", ZoneId::of);
    }

    /** {@code yes} or {@code no}; empty = not given. */
    Optional<Boolean> yes(CsvTable.Row row, String column) {
        return choice(row, column, List.of("yes", "no")).map("yes"::equals);
    }

    Optional<String> choice(CsvTable.Row row, String column, List<String> allowed) {
        Optional<String> text = row.cell(column);
        if (text.isPresent() && !allowed.contains(text.get())) {
            fault(row, column, "\"" + text.get() + "\" is none of " + String.join(", ", allowed));
            return Optional.empty();
        }
        return text;
    }

    static String plain(double number) {
        String text = new java.math.BigDecimal(Double.toString(number))
                .stripTrailingZeros()
                .toPlainString();
        return text.equals("-0") ? "0" : text;
    }

    private <T> Optional<T> parsed(CsvTable.Row row, String column, String wrong, Function<String, T> read) {
        Optional<String> text = row.cell(column);
        try {
            return text.map(read);
        } catch (DateTimeException unreadable) {
            fault(row, column, "\"" + text.orElse("") + "\" " + wrong);
            return Optional.empty();
        }
    }
}
