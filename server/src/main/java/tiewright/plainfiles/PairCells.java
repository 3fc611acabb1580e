package tiewright.plainfiles;

import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;

/** Reads the cells that name a rubber or a pair. */
final class PairCells {
    private final Reading reading;
    private final Cells cells;

    PairCells(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
    }

    /** A rubber that the conditions have. */
    Optional<RubberNo> rubber(CsvTable.Row row) {
        Optional<RubberNo> rubber = cells.needed(row, "rubber").flatMap(RubberNo::parse);
        int most = reading.conditions().rubbers();
        if (row.cell("rubber").isPresent()
                && rubber.filter(no -> no.isDecider() || no.number() <= most).isEmpty()) {
            cells.fault(row, "rubber", "files.not-rubber", "most", most);
            return Optional.empty();
        }
        return rubber;
    }

    /** Empty after a fault; inside, an empty pair is nobody. */
    Optional<Optional<Pair>> pair(CsvTable.Row row, String one, String other, Optional<ClubId> club) {
        Optional<PlayerId> first = reading.playerOf(row, one, club);
        Optional<PlayerId> second = reading.playerOf(row, other, club);
        boolean isEmpty = row.cell(one).isEmpty() && row.cell(other).isEmpty();
        if (isEmpty) {
            return Optional.of(Optional.empty());
        }
        if (row.cell(one).isEmpty() || row.cell(other).isEmpty()) {
            cells.fault(row, row.cell(one).isEmpty() ? one : other, "files.half-pair");
            return Optional.empty();
        }
        if (row.cell(one).equals(row.cell(other))) {
            cells.fault(row, other, "files.same-player");
            return Optional.empty();
        }
        return first.isPresent() && second.isPresent()
                ? Optional.of(Optional.of(Pair.of(first.get(), second.get())))
                : Optional.empty();
    }
}
