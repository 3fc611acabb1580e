package tiewright.timetable;

import java.time.LocalTime;
import java.util.Optional;

/** A court that can be played on, and its hours; empty = open as long as the venue is. */
public record PlanCourt(String name, Optional<LocalTime> from, Optional<LocalTime> until) {
    public static PlanCourt always(String name) {
        return new PlanCourt(name, Optional.empty(), Optional.empty());
    }
}
