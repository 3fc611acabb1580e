package tiewright.timetable;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** The club that umpires a piece. */
@PlanningEntity
class Duty {
    /** A club by its number on the board. */
    record OnDuty(int club) {}

    @PlanningId
    private int piece;

    @PlanningVariable(valueRangeProviderRefs = DayPlan.CLUBS)
    private @Nullable OnDuty club;

    Duty() {}

    Duty(int piece, @Nullable OnDuty club) {
        this.piece = piece;
        this.club = club;
    }

    int piece() {
        return piece;
    }

    @Nullable
    OnDuty club() {
        return club;
    }

    /** Of a duty that somebody has. */
    int clubNumber() {
        return java.util.Objects.requireNonNull(club).club();
    }

    @Override
    public String toString() {
        return "duty at " + piece + ": " + club;
    }
}
