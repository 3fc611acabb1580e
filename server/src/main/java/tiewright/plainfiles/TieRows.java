package tiewright.plainfiles;

import java.time.LocalTime;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** Who meets whom, when and where: ties.csv. */
final class TieRows {
    private final Reading reading;
    private final Cells cells;
    private final Set<String> pools = new HashSet<>();
    private final Map<String, CsvTable.Row> rowOf = new LinkedHashMap<>();
    private final Map<String, Map<Side, SlotSource>> sources = new LinkedHashMap<>();

    TieRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
    }

    void read() {
        reading.rows(PlainFile.TIES).forEach(this::tie);
        rowOf.forEach((tie, row) ->
                Objects.requireNonNull(sources.get(tie)).forEach((side, source) -> source(tie, row, side, source)));
    }

    /** A slot of a tie: the club if it is known, the source if there is one. */
    private record Place(Optional<ClubId> club, Optional<SlotSource> from) {
        /** The ledger first lays out where a club comes from, then who it is. */
        Optional<Slot> slot() {
            return from.map(Slot::from).or(() -> club.map(Slot::of));
        }

        boolean isFilled() {
            return club.isPresent() && from.isPresent();
        }
    }

    private void tie(CsvTable.Row row) {
        Optional<String> code = cells.code(row, "tie");
        Optional<Stage> stage = cells.needed(row, "stage")
                .flatMap(any -> cells.choice(row, "stage", List.of("pool", "knockout", "placing")))
                .flatMap(Stage::parse);
        Optional<String> pool = pool(row, stage);
        OptionalInt round = cells.wholeNeeded(row, "round", 1, 99);
        Place home = place(row, "home");
        Place away = place(row, "away");
        Optional<LocalTime> start = cells.time(row, "start");
        Optional<String> court = cells.text(row, "court");
        playsAnother(row);
        if (code.isEmpty()) {
            return;
        }
        if (!reading.enterTie(code.get(), new Reading.TieSides(home.club(), away.club()))) {
            cells.fault(row, "tie", "files.tie-twice", "tie", code.get());
            return;
        }
        remember(code.get(), row, home, away);
        if (stage.isPresent()
                && round.isPresent()
                && home.slot().isPresent()
                && away.slot().isPresent()) {
            TieId id = TieId.of(code.get());
            arranged(
                    new DrawFact.TieArranged(
                            id,
                            stage.get(),
                            pool,
                            round.getAsInt(),
                            home.slot().get(),
                            away.slot().get()),
                    home,
                    away);
            if (start.isPresent() || court.isPresent()) {
                reading.facts().add(new DrawFact.TieTimed(id, start, court));
            }
        }
    }

    /** Two different sides. */
    private void playsAnother(CsvTable.Row row) {
        if (row.cell("home").isPresent() && row.cell("home").equals(row.cell("away"))) {
            cells.fault(row, "away", "files.plays-itself");
        }
    }

    private void arranged(DrawFact.TieArranged tie, Place home, Place away) {
        reading.facts().add(tie);
        fill(tie.tie(), Side.HOME, home);
        fill(tie.tie(), Side.AWAY, away);
    }

    private void remember(String tie, CsvTable.Row row, Place home, Place away) {
        rowOf.put(tie, row);
        Map<Side, SlotSource> from = new LinkedHashMap<>();
        home.from().ifPresent(source -> from.put(Side.HOME, source));
        away.from().ifPresent(source -> from.put(Side.AWAY, source));
        sources.put(tie, from);
    }

    private void fill(TieId tie, Side side, Place place) {
        if (place.isFilled()) {
            reading.facts().add(new DrawFact.SlotFilled(tie, side, place.club().orElseThrow()));
        }
    }

    private Optional<String> pool(CsvTable.Row row, Optional<Stage> stage) {
        Optional<String> pool = cells.codeIfAny(row, "pool");
        if (stage.filter(s -> s == Stage.POOL).isPresent() && row.cell("pool").isEmpty()) {
            cells.fault(row, "pool", "files.pool-missing");
        }
        if (stage.filter(s -> s != Stage.POOL).isPresent() && pool.isPresent()) {
            cells.fault(row, "pool", "files.pool-in-knockout");
        }
        if (pool.isPresent() && !SlotSource.isPoolName(pool.get())) {
            cells.fault(row, "pool", "files.pool-name");
        }
        pool.ifPresent(pools::add);
        return pool;
    }

    private Place place(CsvTable.Row row, String side) {
        String from = side + "_from";
        Optional<SlotSource> source = row.cell(from).flatMap(SlotSource::parse);
        if (row.cell(from).isPresent() && source.isEmpty()) {
            cells.fault(row, from, "files.no-source");
        }
        if (row.cell(side).isEmpty() && row.cell(from).isEmpty()) {
            cells.fault(row, side, "files.nobody", "column", from);
        }
        return new Place(reading.club(row, side), source);
    }

    private void source(String tie, CsvTable.Row row, Side side, SlotSource source) {
        String column = side.code() + "_from";
        if (source.kind() == SlotSource.Kind.POOL_PLACE) {
            if (!pools.isEmpty() && !pools.contains(source.of())) {
                cells.fault(row, column, "files.no-pool", "pool", source.of());
            }
        } else if (!rowOf.containsKey(source.of())) {
            cells.fault(row, column, "files.no-tie", "tie", source.of());
        } else if (waitsFor(source.of(), tie, new HashSet<>())) {
            cells.fault(row, column, "files.own-result", "tie", tie);
        }
    }

    /** True if {@code tie} can begin only after {@code other}, itself included. */
    private boolean waitsFor(String tie, String other, Set<String> seen) {
        if (tie.equals(other)) {
            return true;
        }
        return seen.add(tie)
                && sources.getOrDefault(tie, Map.of()).values().stream()
                        .filter(source -> source.kind() != SlotSource.Kind.POOL_PLACE)
                        .anyMatch(source -> waitsFor(source.of(), other, seen));
    }
}
