package tiewright.draw;

import java.util.List;
import tiewright.event.ClubId;

/** A drawn pool; the first club of the list has number 1 in the round order. */
public record Pool(String name, List<ClubId> clubs) {
    public Pool {
        clubs = List.copyOf(clubs);
    }
}
