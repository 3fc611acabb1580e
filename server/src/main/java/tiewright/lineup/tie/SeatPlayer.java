package tiewright.lineup.tie;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tiewright.conditions.Plays;
import tiewright.event.PlayerId;

/**
 * A player as the plan sees one.
 *
 * @param number the place in the squad; it alone tells players apart, for these are compared millions of times
 */
record SeatPlayer(PlayerId id, int number, int rank, boolean present, Optional<Plays> plays) {
    /** Of whom nothing is stated: open rubbers only. */
    SeatPlayer(PlayerId id, int number, int rank, boolean present) {
        this(id, number, rank, present, Optional.empty());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SeatPlayer player && player.number == number;
    }

    @Override
    public int hashCode() {
        return number;
    }
}
