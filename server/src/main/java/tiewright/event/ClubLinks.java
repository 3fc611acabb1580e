package tiewright.event;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The captains' and deputies' links of one club, and which of them reads what the club keeps for itself. The first ones do, and
 * those that the club made itself. Any other is let in by one of these; is none of them left, after a numbered notice has stood
 * ten minutes. So nobody who makes links can read by one of them what a club noted or sealed.
 */
public final class ClubLinks {
    /** How long everybody can read that a link was made or ended, before a club without any other is helped by it. */
    public static final Duration NOTICE_STANDS = Duration.ofMinutes(10);

    private final List<Link> links;

    private ClubLinks(List<Link> links) {
        this.links = links;
    }

    static ClubLinks of(Collection<Link> all, ClubId club) {
        return new ClubLinks(all.stream().filter(link -> link.isCaptainOf(club)).toList());
    }

    /** In the order they were made, ended ones too. */
    public List<Link> all() {
        return links;
    }

    /** Whether a link made now stands with the first: none was made by another press. */
    boolean isNone(Link.Act now) {
        return links.stream().allMatch(link -> link.life().made().equals(now));
    }

    /** Those in use that nobody of the club has let in. */
    public List<Link> waiting() {
        return links.stream()
                .filter(link -> !link.revoked() && link.life().letIn().isEmpty())
                .toList();
    }

    /** Whether somebody of the club is there who can let others in. */
    public boolean hasElder() {
        return links.stream()
                .anyMatch(link -> !link.revoked() && link.life().letIn().isPresent());
    }

    /** Whether a link of this club reads what the club keeps for itself. */
    public boolean isLetIn(Link link, Instant now) {
        return !link.revoked()
                && (link.life().letIn().isPresent()
                        || letInBy(link).filter(at -> !now.isBefore(at)).isPresent());
    }

    /** When a link will be let in although nobody of the club has done so; empty while somebody can. */
    public Optional<Instant> letInBy(Link link) {
        if (hasElder()) {
            return Optional.empty();
        }
        return links.stream()
                .filter(one -> one.life().letIn().isPresent())
                .flatMap(one -> one.life().ended().stream())
                .map(Link.Act::at)
                .filter(link.life().made().at()::isBefore)
                .max(Instant::compareTo)
                .or(() -> Optional.of(link.life().made().at()))
                .map(at -> at.plus(NOTICE_STANDS));
    }
}
