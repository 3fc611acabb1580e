package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.event.ClubId;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.TieId;

/**
 * Who was named and who played: sheets.csv and rubbers.csv together.
 *
 * <p>Where a tie has no sheet, the pairs of rubbers.csv stand in for it, without receipt. Where both are there, a pair
 * that differs was replaced after the opening; through which door the files do not say.
 */
final class OpenedRows {
    /** A replacement that comes with files was put in writing by whoever made them. */
    private static final String DOOR = "clerical";

    private static final String APPROVED_BY = "plain files";

    private final Reading reading;
    private final Cells cells;
    private final PairCells pairs;
    private final Map<ExchangeId, SortedMap<RubberNo, Played>> played = new LinkedHashMap<>();

    OpenedRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
        this.pairs = new PairCells(reading);
    }

    private record Played(CsvTable.Row row, Map<Side, Optional<Pair>> pairs) {
        Optional<Pair> pair(Side side) {
            return Objects.requireNonNull(pairs.get(side));
        }
    }

    void read() {
        Map<ExchangeId, Map<Side, SheetRows.Opened>> sheets = new SheetRows(reading).read();
        reading.rows(PlainFile.RUBBERS).forEach(this::rubber);
        for (ExchangeId exchange : inOrder(sheets.keySet())) {
            opening(exchange, sheets.getOrDefault(exchange, Map.of()));
        }
    }

    /** The exchanges that have anything, ties in the order of ties.csv. */
    private List<ExchangeId> inOrder(Set<ExchangeId> withSheets) {
        Set<ExchangeId> any = new LinkedHashSet<>(withSheets);
        any.addAll(played.keySet());
        List<ExchangeId> sorted = new ArrayList<>();
        for (String tie : reading.ties().keySet()) {
            for (SheetKind kind : SheetKind.values()) {
                ExchangeId exchange = new ExchangeId(TieId.of(tie), kind);
                if (any.contains(exchange) && reading.sides(exchange.tie()).areKnown()) {
                    sorted.add(exchange);
                }
            }
        }
        return sorted;
    }

    private void rubber(CsvTable.Row row) {
        Optional<TieId> tie = reading.tieNeeded(row, "tie");
        Optional<RubberNo> rubber = pairs.rubber(row);
        Optional<ClubId> home = tie.flatMap(id -> reading.sides(id).home());
        Optional<ClubId> away = tie.flatMap(id -> reading.sides(id).away());
        Optional<Optional<Pair>> homePair = pairs.pair(row, "home_1", "home_2", home);
        Optional<Optional<Pair>> awayPair = pairs.pair(row, "away_1", "away_2", away);
        if (tie.isEmpty()
                || rubber.isEmpty()
                || homePair.isEmpty()
                || awayPair.isEmpty()
                || !reading.isUnderWay(row, tie.get())) {
            return;
        }
        ExchangeId exchange = rubber.get().isDecider() ? ExchangeId.decider(tie.get()) : ExchangeId.sheets(tie.get());
        Map<Side, Optional<Pair>> both = new EnumMap<>(Side.class);
        both.put(Side.HOME, homePair.get());
        both.put(Side.AWAY, awayPair.get());
        Played before = played.computeIfAbsent(exchange, any -> new TreeMap<>())
                .putIfAbsent(rubber.get(), new Played(row, both));
        if (before != null) {
            cells.fault(row, "rubber", "files.rubber-twice", "rubber", rubber.get(), "tie", tie.get());
        }
    }

    private void opening(ExchangeId exchange, Map<Side, SheetRows.Opened> sheets) {
        SortedMap<RubberNo, Played> rubbers = played.getOrDefault(exchange, new TreeMap<>());
        Map<Side, Sheet> named = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Optional.ofNullable(sheets.get(side))
                    .map(SheetRows.Opened::sheet)
                    .or(() -> fromRubbers(rubbers, side))
                    .ifPresent(sheet -> named.put(side, sheet));
        }
        if (named.size() < 2) {
            SheetRows.Opened alone = sheets.values().iterator().next();
            cells.fault(alone.row(), "club", "files.other-sheet-missing");
            return;
        }
        sheets.forEach((side, opened) -> opened.receipt()
                .ifPresent(receipt -> reading.facts()
                        .add(new ExchangeFact.SheetSealed(exchange, club(exchange, side), receipt, false))));
        reading.facts().add(opened(exchange, sheets, named));
        rubbers.forEach((rubber, who) -> replaced(exchange, rubber, who, named));
    }

    private static ExchangeFact.SheetsOpened opened(
            ExchangeId exchange, Map<Side, SheetRows.Opened> sheets, Map<Side, Sheet> named) {
        return new ExchangeFact.SheetsOpened(
                exchange,
                Objects.requireNonNull(named.get(Side.HOME)),
                Optional.ofNullable(sheets.get(Side.HOME)).flatMap(SheetRows.Opened::secret),
                Objects.requireNonNull(named.get(Side.AWAY)),
                Optional.ofNullable(sheets.get(Side.AWAY)).flatMap(SheetRows.Opened::secret),
                sheets.values().stream().flatMap(opened -> opened.at().stream()).findFirst());
    }

    private static Optional<Sheet> fromRubbers(SortedMap<RubberNo, Played> rubbers, Side side) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        rubbers.forEach((rubber, who) -> pairs.put(rubber, who.pair(side)));
        return pairs.isEmpty() ? Optional.empty() : Optional.of(new Sheet(pairs));
    }

    private void replaced(ExchangeId exchange, RubberNo rubber, Played who, Map<Side, Sheet> named) {
        boolean isNamed =
                named.values().stream().anyMatch(sheet -> sheet.pairs().containsKey(rubber));
        if (!isNamed) {
            cells.fault(who.row(), "rubber", "files.no-rubber", "tie", exchange.tie(), "rubber", rubber);
            return;
        }
        named.forEach((side, sheet) -> {
            Optional<Pair> pair = who.pair(side);
            if (!pair.equals(sheet.pair(rubber))) {
                reading.facts()
                        .add(new ExchangeFact.PairReplaced(
                                exchange, club(exchange, side), rubber, pair, DOOR, APPROVED_BY));
            }
        });
    }

    private ClubId club(ExchangeId exchange, Side side) {
        return reading.sides(exchange.tie()).club(side).orElseThrow();
    }
}
