package tiewright.event;

import java.util.Optional;

/**
 * For whom a page is made.
 *
 * @param link the link that was opened, such as L7; what a club keeps for itself is shown to such a viewer alone
 */
public record Viewer(Role role, Optional<ClubId> club, Optional<PlayerId> player, Optional<String> link) {
    public static final Viewer PUBLIC = new Viewer(Role.PUBLIC, Optional.empty(), Optional.empty());

    public Viewer {
        if (role.isOfAClub() && club.isEmpty()) {
            throw new IllegalArgumentException("a " + role.code() + " belongs to a club");
        }
    }

    public Viewer(Role role, Optional<ClubId> club, Optional<PlayerId> player) {
        this(role, club, player, Optional.empty());
    }

    /** Whoever opened this link. */
    public static Viewer of(Link link) {
        return new Viewer(link.role(), link.club(), link.player(), Optional.of(link.name()));
    }

    public static Viewer of(Role role) {
        return new Viewer(role, Optional.empty(), Optional.empty());
    }

    public static Viewer captain(ClubId club) {
        return new Viewer(Role.CAPTAIN, Optional.of(club), Optional.empty());
    }

    public static Viewer player(ClubId club, PlayerId player) {
        return new Viewer(Role.PLAYER, Optional.of(club), Optional.of(player));
    }

    public boolean isCaptainOf(ClubId other) {
        return role == Role.CAPTAIN && club.filter(other::equals).isPresent();
    }

    public boolean isOf(ClubId other) {
        return club.filter(other::equals).isPresent();
    }
}
