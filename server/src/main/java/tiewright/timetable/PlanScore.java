package tiewright.timetable;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * How good a plan is: what it breaks, and what it costs, part by part. A plan with fewer breaches is better; of two with as
 * many the first part that differs decides.
 *
 * @param breaches of what must hold; 0 for a plan that can be played
 * @param parts the cost of each part in its own unit, see {@link Part}; less is better
 */
public record PlanScore(long breaches, Map<Part, Long> parts) implements Comparable<PlanScore> {
    public PlanScore {
        EnumMap<Part, Long> copy = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            copy.put(part, parts.getOrDefault(part, 0L));
        }
        parts = Collections.unmodifiableMap(copy);
    }

    public long of(Part part) {
        return Objects.requireNonNull(parts.get(part));
    }

    /** Less than 0 if this one is better. */
    @Override
    public int compareTo(PlanScore other) {
        int first = Long.compare(breaches, other.breaches);
        for (Part part : Part.values()) {
            first = first == 0 ? Long.compare(of(part), other.of(part)) : first;
        }
        return first;
    }
}
