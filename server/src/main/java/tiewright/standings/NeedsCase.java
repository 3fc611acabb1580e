package tiewright.standings;

import java.util.List;
import java.util.Optional;

/**
 * What follows if the club's own ties end like this.
 *
 * @param results of the club's ties left, in the order of the ties; empty when it has none
 * @param prospect empty when nobody asked how many go through
 * @param helps single results of other ties that settle it; only while it is open
 */
public record NeedsCase(
        List<OwnResult> results,
        PlaceRange places,
        boolean mayNeedLot,
        boolean exact,
        Optional<Prospect> prospect,
        List<Help> helps) {
    public NeedsCase {
        results = List.copyOf(results);
        helps = List.copyOf(helps);
    }
}
