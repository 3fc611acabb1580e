package tiewright.event;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * When private data go, as it was promised, and whether they have gone.
 *
 * @param promised the date in force and what stands for players afterwards; empty while no date is set
 * @param erasedAt when they last were deleted
 */
public record Deletion(Optional<SetUpFact.DeletionDated> promised, Optional<Instant> erasedAt) {
    static final Deletion NONE = new Deletion(Optional.empty(), Optional.empty());

    /** Time for a protest, for a captain who sits over the film, and for a last look at the results. */
    private static final int WEEKS = 4;

    /** What holds unless somebody sets a date: four weeks after the event, or after today where the event is long over. */
    public static LocalDate usual(LocalDate event, LocalDate today) {
        return (event.isBefore(today) ? today : event).plusWeeks(WEEKS);
    }

    /** Whether what is private and comes from this moment has been deleted. */
    public boolean covers(Instant moment) {
        return erasedAt.filter(at -> !at.isBefore(moment)).isPresent();
    }

    Deletion dated(SetUpFact.DeletionDated fact) {
        return new Deletion(Optional.of(fact), erasedAt);
    }

    Deletion erased(Instant at) {
        return new Deletion(promised, Optional.of(at));
    }
}
