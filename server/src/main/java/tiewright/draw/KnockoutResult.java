package tiewright.draw;

import java.util.List;

/** What became of a draw of the knockout. */
public sealed interface KnockoutResult {
    /** The bracket was drawn. */
    record Planned(KnockoutPlan plan) implements KnockoutResult {}

    /** No draw was made, for all these reasons. */
    record Refused(List<DrawFault> faults) implements KnockoutResult {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
