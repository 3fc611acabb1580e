package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.OfficialFact;
import tiewright.event.TieId;

/** What officials settled: withdrawals.csv and lots.csv. */
final class EndRows {
    private final Reading reading;
    private final Cells cells;
    private final Set<ClubId> withdrawn = new HashSet<>();

    EndRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
    }

    void read() {
        reading.rows(PlainFile.WITHDRAWALS).forEach(this::withdrawal);
        Map<Draw, List<ClubId>> draws = new LinkedHashMap<>();
        Map<Draw, String> witnesses = new LinkedHashMap<>();
        reading.rows(PlainFile.LOTS).forEach(row -> lot(row, draws, witnesses));
        draws.forEach((draw, order) ->
                reading.facts().add(new OfficialFact.LotDrawn(draw.pool(), order, witnesses.getOrDefault(draw, ""))));
    }

    private record Draw(String pool, int number) {}

    private void withdrawal(CsvTable.Row row) {
        Optional<ClubId> club = reading.clubNeeded(row, "club");
        Optional<TieId> after = reading.tie(row, "after_tie");
        Optional<Withdrawal> treatment = cells.choice(row, "treatment", List.of("annul", "keep", "award"))
                .flatMap(Withdrawal::parse);
        if (club.isEmpty()) {
            return;
        }
        if (!withdrawn.add(club.get())) {
            cells.fault(row, "club", "files.club-twice", "club", club.get());
            return;
        }
        Optional<Reading.TieSides> last = after.map(reading::sides).filter(Reading.TieSides::areKnown);
        if (last.isPresent() && last.get().sideOf(club.get()).isEmpty()) {
            cells.fault(row, "after_tie", "files.not-in-tie", "club", club.get(), "tie", after.get());
            return;
        }
        reading.facts()
                .add(new OfficialFact.ClubWithdrawn(
                        club.get(), after, treatment.orElse(reading.conditions().withdrawal()), 0));
    }

    private void lot(CsvTable.Row row, Map<Draw, List<ClubId>> draws, Map<Draw, String> witnesses) {
        Optional<String> pool = cells.code(row, "pool");
        OptionalInt number = cells.wholeNeeded(row, "draw", 1, 99);
        Optional<ClubId> club = reading.clubNeeded(row, "club");
        Optional<String> witness = cells.text(row, "witness");
        if (pool.isEmpty() || number.isEmpty() || club.isEmpty()) {
            return;
        }
        Draw draw = new Draw(pool.get(), number.getAsInt());
        List<ClubId> order = draws.computeIfAbsent(draw, any -> new ArrayList<>());
        if (order.contains(club.get())) {
            cells.fault(row, "club", "files.club-twice-in-draw", "club", club.get());
        } else {
            order.add(club.get());
        }
        witness.ifPresent(name -> witnesses.putIfAbsent(draw, name));
    }
}
