package tiewright.standings;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.ClubId;

/**
 * A lot that an official has drawn in front of a witness. It parts exactly the clubs it was drawn among: when a
 * correction changes who is level, it no longer counts.
 *
 * @param order the clubs, best first, at least two and each once
 * @param witness the person who watched, not blank
 */
public record LotDrawn(List<ClubId> order, String witness) {
    public LotDrawn {
        order = List.copyOf(order);
        if (order.size() < 2 || Set.copyOf(order).size() != order.size() || witness.isBlank()) {
            throw new IllegalArgumentException(
                    "a lot is drawn among two or more different clubs before a witness: " + order);
        }
    }

    /** The lot drawn among just these clubs, the last one if there are several. */
    static Optional<LotDrawn> among(List<ClubId> clubs, List<LotDrawn> lots) {
        Set<ClubId> level = Set.copyOf(clubs);
        return lots.stream().filter(lot -> Set.copyOf(lot.order).equals(level)).reduce((earlier, later) -> later);
    }
}
