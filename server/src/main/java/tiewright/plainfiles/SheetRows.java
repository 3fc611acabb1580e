package tiewright.plainfiles;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.sheet.Receipt;

/** The opened sheets: sheets.csv, gathered to one sheet a club for the rubbers of a tie and one for its decider. */
final class SheetRows {
    private final Reading reading;
    private final Cells cells;
    private final PairCells pairs;

    SheetRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
        this.pairs = new PairCells(reading);
    }

    /** Sheets of which a row could not be read: their receipt says nothing about the others. */
    private final Set<List<Optional<String>>> partly = new HashSet<>();

    /** A club's opened sheet. */
    record Opened(
            CsvTable.Row row, Sheet sheet, Optional<String> receipt, Optional<String> secret, Optional<LocalTime> at) {}

    private record Key(ExchangeId exchange, ClubId club) {}

    private record Line(CsvTable.Row row, RubberNo rubber, Optional<Pair> pair, Optional<LocalTime> at) {}

    /** The sheets of every exchange in the order of the file, by side; clubs that are not of their tie are faults. */
    Map<ExchangeId, Map<Side, Opened>> read() {
        Map<Key, List<Line>> lines = new LinkedHashMap<>();
        reading.rows(PlainFile.SHEETS).forEach(row -> line(row, lines));
        Map<ExchangeId, Map<Side, Opened>> sheets = new LinkedHashMap<>();
        lines.forEach((key, rows) -> {
            Optional<Side> side = reading.sides(key.exchange().tie()).sideOf(key.club());
            Optional<Opened> opened = opened(key, rows);
            if (side.isPresent() && opened.isPresent()) {
                sheets.computeIfAbsent(key.exchange(), any -> new EnumMap<>(Side.class))
                        .put(side.get(), opened.get());
            }
        });
        sheets.values().forEach(this::openedTogether);
        return sheets;
    }

    private void line(CsvTable.Row row, Map<Key, List<Line>> lines) {
        Optional<TieId> tie = reading.tieNeeded(row, "tie");
        Optional<ClubId> club = reading.clubNeeded(row, "club");
        Optional<RubberNo> rubber = pairs.rubber(row);
        Optional<Optional<Pair>> pair = pairs.pair(row, "player_1", "player_2", club);
        Optional<LocalTime> at = cells.needed(row, "opened_at").flatMap(any -> cells.time(row, "opened_at"));
        if (tie.isEmpty()
                || club.isEmpty()
                || rubber.isEmpty()
                || pair.isEmpty()
                || !reading.isUnderWay(row, tie.get())) {
            partly.add(sheet(row));
            return;
        }
        if (reading.sides(tie.get()).areKnown()
                && reading.sides(tie.get()).sideOf(club.get()).isEmpty()) {
            cells.fault(row, "club", "files.not-in-tie", "club", club.get(), "tie", tie.get());
            return;
        }
        ExchangeId exchange = rubber.get().isDecider() ? ExchangeId.decider(tie.get()) : ExchangeId.sheets(tie.get());
        add(
                new Line(row, rubber.get(), pair.get(), at),
                lines.computeIfAbsent(new Key(exchange, club.get()), any -> new ArrayList<>()));
    }

    private static List<Optional<String>> sheet(CsvTable.Row row) {
        return List.of(row.cell("tie"), row.cell("club"));
    }

    private void add(Line line, List<Line> sheet) {
        if (sheet.stream().anyMatch(other -> other.rubber().equals(line.rubber()))) {
            cells.fault(line.row(), "rubber", "files.rubber-of-sheet-twice", "rubber", line.rubber());
        } else {
            sheet.add(line);
        }
    }

    private Optional<Opened> opened(Key key, List<Line> lines) {
        int before = cells.faults().size();
        Optional<LocalTime> at = same(lines, "opened_at", Line::at);
        Optional<String> receipt = same(lines, "receipt", line -> line.row().cell("receipt"));
        Optional<String> secret = same(lines, "secret", line -> line.row().cell("secret"));
        CsvTable.Row row = lines.get(0).row();
        if (secret.filter(text -> !Receipt.isSecret(text)).isPresent()) {
            cells.fault(row, "secret", "files.no-secret");
        }
        if (receipt.filter(text -> !Receipt.isSecret(text)).isPresent()) {
            cells.fault(row, "receipt", "files.no-receipt");
        }
        if (cells.faults().size() > before) {
            return Optional.empty();
        }
        SortedMap<RubberNo, Optional<Pair>> named = new TreeMap<>();
        lines.forEach(line -> named.put(line.rubber(), line.pair()));
        Sheet sheet = new Sheet(named);
        Optional<String> made =
                secret.map(text -> Receipt.of(text, key.exchange().tie(), key.club(), sheet));
        if (made.isPresent() && receipt.isPresent() && !made.equals(receipt) && !partly.contains(sheet(row))) {
            cells.fault(row, "receipt", "files.other-receipt", "receipt", made.get());
        }
        return Optional.of(new Opened(row, sheet, receipt.or(() -> made), secret, at));
    }

    /** What all rows of a sheet that say anything must say alike. */
    private <T> Optional<T> same(List<Line> lines, String column, Function<Line, Optional<T>> value) {
        Optional<T> said = Optional.empty();
        for (Line line : lines) {
            Optional<T> here = value.apply(line);
            if (said.isPresent() && here.isPresent() && !here.equals(said)) {
                cells.fault(line.row(), column, "files.rows-differ", "value", said.get());
                return said;
            }
            said = said.or(() -> here);
        }
        return said;
    }

    private void openedTogether(Map<Side, Opened> sheets) {
        Optional<LocalTime> home = Optional.ofNullable(sheets.get(Side.HOME)).flatMap(Opened::at);
        Opened other = sheets.get(Side.AWAY);
        if (home.isPresent() && other != null && other.at().isPresent() && !home.equals(other.at())) {
            cells.fault(other.row(), "opened_at", "files.opened-apart", "time", home.get());
        }
    }
}
