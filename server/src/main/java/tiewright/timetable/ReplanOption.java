package tiewright.timetable;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.conditions.Conditions;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/**
 * One way to go on.
 *
 * @param conditions those to play under from now on, where the option changes them
 * @param plan of today
 * @param nextDay what is played on the next day; empty where everything is today
 * @param notPlayed ties that this option leaves out altogether
 * @param fairness what it does to the contest
 * @param cost in rubbers of play lost or moved, see docs/models.md; 0 = everything is played today as the conditions say
 * @param clubs whose players must be told
 * @param people how many they are; a club whose squad is not known counts as one
 */
public record ReplanOption(
        Cut cut,
        Optional<Conditions> conditions,
        Plan plan,
        Optional<Plan> nextDay,
        List<TieId> notPlayed,
        List<Reason> fairness,
        double cost,
        Set<ClubId> clubs,
        int people) {
    public ReplanOption {
        notPlayed = List.copyOf(notPlayed);
        fairness = List.copyOf(fairness);
        clubs = java.util.Collections.unmodifiableSet(new java.util.LinkedHashSet<>(clubs));
    }

    /** It keeps everything that must hold, and ends in time today. */
    public boolean isFeasible() {
        return plan.isPlayable();
    }

    public LocalTime finish() {
        return plan.finish();
    }
}
