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
import tiewright.event.ClubId;
import tiewright.event.Codes;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.scoring.Format;

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

    void fault(CsvTable.Row row, String column, Refusal reason) {
        faults.add(row.fault(column, reason));
    }

    /** The same, with the facts of the reason as names and values in turn; in a file people and clubs are their codes. */
    void fault(CsvTable.Row row, String column, String code, Object... facts) {
        Refusal reason = Refusal.of(code);
        for (int i = 0; i < facts.length; i += 2) {
            Object fact = facts[i + 1];
            boolean isId = fact instanceof PlayerId || fact instanceof ClubId;
            reason = reason.with((String) facts[i], isId ? fact.toString() : fact);
        }
        fault(row, column, reason);
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
            fault(row, column, "files.missing");
        }
        return text;
    }

    /** Words on one line. */
    Optional<String> text(CsvTable.Row row, String column) {
        Optional<String> text = row.cell(column);
        if (text.filter(words -> words.length() > LONGEST_TEXT).isPresent()) {
            fault(row, column, "files.too-long", "most", LONGEST_TEXT);
            return Optional.empty();
        }
        if (text.filter(words -> words.chars().anyMatch(Character::isISOControl))
                .isPresent()) {
            fault(row, column, "files.one-line");
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

    /** The code of a club that this file brings in. */
    Optional<String> clubCode(CsvTable.Row row, String column) {
        Optional<String> code = code(row, column);
        code.filter(text -> !ClubId.isFit(text))
                .ifPresent(text -> fault(row, column, "files.no-club-code", "value", text));
        return code;
    }

    Optional<String> codeIfAny(CsvTable.Row row, String column) {
        return row.cell(column).filter(text -> isCode(row, column, text));
    }

    private boolean isCode(CsvTable.Row row, String column, String text) {
        if (!Codes.isCode(text)) {
            fault(row, column, "files.no-code", "value", text, "most", Codes.LONGEST);
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
        fault(row, column, "files.not-whole", "value", text.get(), "least", least, "most", most);
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
        fault(row, column, "files.not-number", "value", text.get(), "least", plain(least), "most", plain(most));
        return OptionalDouble.empty();
    }

    /** A standard deviation: more than 0, for with none at all no game could ever change the judgement. */
    OptionalDouble doubt(CsvTable.Row row, String column, double most) {
        OptionalDouble number = number(row, column, 0, most);
        if (number.isPresent() && number.getAsDouble() == 0) {
            fault(row, column, "files.doubt", "most", plain(most));
            return OptionalDouble.empty();
        }
        return number;
    }

    Optional<Format> format(CsvTable.Row row) {
        Optional<String> text = row.cell("format");
        Optional<Format> format = text.flatMap(Format::parse);
        if (text.isPresent() && format.isEmpty()) {
            fault(row, "format", "files.no-format", "value", text.get());
        }
        return format;
    }

    Optional<LocalTime> time(CsvTable.Row row, String column) {
        return parsed(row, column, "files.no-time", text -> LocalTime.parse(text, HOUR));
    }

    /** The two ends of a span of time; a fault when it ends before it begins. */
    void span(CsvTable.Row row, String from, Optional<LocalTime> begin, String until, Optional<LocalTime> end) {
        if (begin.isPresent() && end.isPresent() && !begin.get().isBefore(end.get())) {
            fault(row, until, "files.not-after", "until", until, "end", end.get(), "from", from, "begin", begin.get());
        }
    }

    Optional<LocalDate> date(CsvTable.Row row, String column) {
        return parsed(row, column, "files.no-date", LocalDate::parse);
    }

    Optional<ZoneId> zone(CsvTable.Row row, String column) {
        return parsed(row, column, "files.no-zone", ZoneId::of);
    }

    /** {@code yes} or {@code no}; empty = not given. */
    Optional<Boolean> yes(CsvTable.Row row, String column) {
        return choice(row, column, List.of("yes", "no")).map("yes"::equals);
    }

    Optional<String> choice(CsvTable.Row row, String column, List<String> allowed) {
        Optional<String> text = row.cell(column);
        if (text.isPresent() && !allowed.contains(text.get())) {
            fault(row, column, "files.none-of", "value", text.get(), "allowed", allowed);
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
            fault(row, column, wrong, "value", text.orElse(""));
            return Optional.empty();
        }
    }
}
