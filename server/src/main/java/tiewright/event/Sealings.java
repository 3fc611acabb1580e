package tiewright.event;

import java.time.Instant;
import java.util.Optional;

/**
 * How often a side sealed, when, and by which links. A sheet is read by the links that were there when it was sealed; one made
 * later, or not let in, may put another in its place, and is named until an older one confirms.
 *
 * @param times how often; the last one would count
 * @param inPlace the sheet that would count; empty once it went back
 */
public record Sealings(int times, Optional<Instant> first, Optional<Instant> last, Optional<InPlace> inPlace) {
    static final Sealings NONE = new Sealings(0, Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * A sealed sheet.
     *
     * @param seq number of the fact that sealed it
     * @param by the link that did; empty where it was none, as with an event that is brought in
     * @param confirmed number of the last fact by which a link sealed that may vouch for its club; 0 for none
     */
    public record InPlace(long seq, Optional<String> by, long confirmed) {
        /** Whether a link sealed it that was made after the sheet before it, or that the club had not let in. */
        public boolean isUnconfirmed() {
            return confirmed != seq;
        }

        /** Whether this link of the club may read it, as long as it is let in where that is asked. */
        boolean wasThere(Link link) {
            return by.filter(link.name()::equals).isPresent()
                    || link.life().seq() < seq
                    || by.isEmpty() && link.isFirst();
        }

        boolean isBy(Link link) {
            return by.filter(link.name()::equals).isPresent();
        }
    }

    /** @param letIn whether the link, if it was one, was let in by its club at that moment */
    Sealings sealed(Recorded recorded, Optional<Link> by, boolean letIn) {
        long before = inPlace.map(InPlace::confirmed).orElse(Long.MAX_VALUE);
        boolean vouches =
                by.isEmpty() || letIn && (before == 0 || by.get().life().seq() < before);
        long confirmed =
                vouches ? recorded.seq() : inPlace.map(InPlace::confirmed).orElse(0L);
        Instant at = recorded.receivedAt();
        return new Sealings(
                times + 1,
                first.or(() -> Optional.of(at)),
                Optional.of(at),
                Optional.of(new InPlace(recorded.seq(), by.map(Link::name), confirmed)));
    }

    Sealings returned() {
        return new Sealings(times, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
