package tiewright.ledger;

import java.util.List;
import tiewright.event.Decision.SealedRef;

/**
 * What a restored folder holds.
 *
 * @param facts how many
 * @param mustSealAgain the sealed sheets whose key did not come with the backup; nobody can read them any more, and
 *     their clubs must seal again
 */
public record Restored(long facts, List<SealedRef> mustSealAgain) {
    public Restored {
        mustSealAgain = List.copyOf(mustSealAgain);
    }
}
