package tiewright.http.visit;

import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import tiewright.event.Tie;

/** The order in which pages list ties. */
public final class TieOrder {
    private TieOrder() {}

    /** By start, those without one last; then by round. */
    public static List<Tie> sorted(List<Tie> ties) {
        return ties.stream()
                .sorted(Comparator.comparing((Tie tie) -> tie.start().orElse(LocalTime.MAX))
                        .thenComparing(Tie::round))
                .toList();
    }
}
