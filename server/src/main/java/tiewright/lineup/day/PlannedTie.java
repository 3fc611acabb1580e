package tiewright.lineup.day;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A tie of the day and the sheet planned for it, one of those that are legal in it. */
@PlanningEntity
class PlannedTie {
    static final String SHEETS = "sheets";

    @PlanningId
    private int tie;

    @ValueRangeProvider(id = SHEETS)
    @SuppressWarnings("UnusedVariable") // read by OptaPlanner
    private List<DaySheet> sheets = List.of();

    @PlanningVariable(valueRangeProviderRefs = SHEETS)
    private @Nullable DaySheet sheet;

    PlannedTie() {}

    PlannedTie(int tie, List<DaySheet> sheets, @Nullable DaySheet sheet) {
        this.tie = tie;
        this.sheets = sheets;
        this.sheet = sheet;
    }

    int tie() {
        return tie;
    }

    /** Not asked for before there is one. */
    DaySheet sheet() {
        return java.util.Objects.requireNonNull(sheet);
    }

    boolean isPlanned() {
        return sheet != null;
    }

    @Override
    public String toString() {
        return "tie " + tie + ": " + sheet;
    }
}
