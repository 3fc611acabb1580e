package tiewright.plainfiles;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Codes;

/** Reads single values of rows and collects what is wrong with them. */
final class Cells {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm");
  private final List<FolderFault> faults = new ArrayList<>();

  List<FolderFault> faults() {
    return faults;
  }

  void fault(CsvTable.Row row, String column, String reason) {
    faults.add(row.fault(column, reason));
  }

  Optional<String> needed(CsvTable.Row row, String column) {
    Optional<String> text = row.cell(column);
    if (text.isEmpty()) {
      fault(row, column, "this value is missing");
    }
    return text;
  }

  Optional<String> code(CsvTable.Row row, String column) {
    return needed(row, column).filter(text -> isCode(row, column, text));
  }

  Optional<String> codeIfAny(CsvTable.Row row, String column) {
    return row.cell(column).filter(text -> isCode(row, column, text));
  }

  private boolean isCode(CsvTable.Row row, String column, String text) {
    if (!Codes.isCode(text)) {
      fault(row, column, "\"" + text + "\" is no code: use 1 to " + Codes.LONGEST + " characters without a comma");
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
    if (text.get().matches("\\d{1,6}")) {
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

  Optional<LocalTime> time(CsvTable.Row row, String column) {
    return parsed(row, column, "is not a time such as 13:20", text -> LocalTime.parse(text, HOUR));
  }

  Optional<LocalDate> date(CsvTable.Row row, String column) {
    return parsed(row, column, "is not a date such as 2026-05-30", LocalDate::parse);
  }

  Optional<ZoneId> zone(CsvTable.Row row, String column) {
    return parsed(row, column, "is not a time zone such as Europe/Lisbon", ZoneId::of);
  }

  /** {@code yes} or {@code no}; empty = not given. */
  Optional<Boolean> yes(CsvTable.Row row, String column) {
    Optional<String> text = row.cell(column);
    if (text.isPresent() && !text.get().equals("yes") && !text.get().equals("no")) {
      fault(row, column, "\"" + text.get() + "\" is neither yes nor no");
      return Optional.empty();
    }
    return text.map("yes"::equals);
  }

  void number(CsvTable.Row row, String column) {
    row.cell(column).filter(text -> !text.matches("[+-]?\\d{1,3}(\\.\\d+)?"))
        .ifPresent(text -> fault(row, column, "\"" + text + "\" is not a number"));
  }

  private <T> Optional<T> parsed(CsvTable.Row row, String column, String wrong, java.util.function.Function<String, T> read) {
    Optional<String> text = row.cell(column);
    try {
      return text.map(read);
    } catch (DateTimeException unreadable) {
      fault(row, column, "\"" + text.orElse("") + "\" " + wrong);
      return Optional.empty();
    }
  }
}
