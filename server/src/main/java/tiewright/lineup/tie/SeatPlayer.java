package tiewright.lineup.tie;

import org.jspecify.annotations.Nullable;
import tiewright.event.PlayerId;

/**
 * A player as the plan sees one.
 *
 * @param number the place in the squad; it alone tells players apart, for these are compared millions of times
 */
record SeatPlayer(PlayerId id, int number, int rank, boolean present) {
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SeatPlayer player && player.number == number;
    }

    @Override
    public int hashCode() {
        return number;
    }
}
