package tiewright.event;

import java.util.Optional;

/** A personal link, known by its name; only a hash of its secret is kept. */
public record Link(
        String name,
        Role role,
        Optional<ClubId> club,
        Optional<PlayerId> player,
        String label,
        String hash,
        boolean revoked) {

    Link asRevoked() {
        return new Link(name, role, club, player, label, hash, true);
    }
}
