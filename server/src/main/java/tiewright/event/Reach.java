package tiewright.event;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How far the ledger reaches for whom. A captain who replaces a sealed sheet adds a fact that nobody else may notice, not
 * even by a number that went up; so each audience counts only what it may see.
 *
 * @param everybody the last fact that everybody may notice
 * @param count how many such facts there are: the version that pages show
 * @param heardAt when the last of them was received
 * @param officials the last fact that only officials may notice
 * @param clubs the last fact that only a club's own links may notice
 */
public record Reach(long everybody, int count, Optional<Instant> heardAt, long officials, Map<ClubId, Long> clubs) {
    static final Reach NOTHING = new Reach(0, 0, Optional.empty(), 0, Map.of());

    public Reach {
        clubs = Map.copyOf(clubs); // the same map again where it has not changed, as for most facts
    }

    Reach toEverybody(long seq, Instant at) {
        return new Reach(seq, count + 1, Optional.of(at), officials, clubs);
    }

    Reach toOfficials(long seq) {
        return new Reach(everybody, count, heardAt, seq, clubs);
    }

    Reach toClub(ClubId club, long seq) {
        Map<ClubId, Long> more = new HashMap<>(clubs);
        more.put(club, seq);
        return new Reach(everybody, count, heardAt, officials, more);
    }

    /** The last fact this viewer may notice. */
    public long seq(Viewer viewer) {
        long seq = everybody;
        if (viewer.role().isOfficial()) {
            seq = Math.max(seq, officials);
        }
        return Math.max(
                seq, viewer.club().map(club -> clubs.getOrDefault(club, 0L)).orElse(0L));
    }
}
