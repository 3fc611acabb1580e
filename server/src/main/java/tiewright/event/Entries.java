package tiewright.event;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Who takes part, where, and who may act: clubs, their squads, courts, personal links. */
public record Entries(
        Map<ClubId, Club> clubs, Map<PlayerId, Player> players, Map<String, Court> courts, Map<String, Link> links) {
    static final Entries NONE = new Entries(Map.of(), Map.of(), Map.of(), Map.of());

    public Entries {
        clubs = Frozen.copy(clubs);
        players = Frozen.copy(players);
        courts = Frozen.copy(courts);
        links = Frozen.copy(links);
    }

    public Optional<Club> club(ClubId id) {
        return Optional.ofNullable(clubs.get(id));
    }

    public Optional<Player> player(PlayerId id) {
        return Optional.ofNullable(players.get(id));
    }

    /** The link that somebody acted by; empty where it was none. */
    public Optional<Link> link(Actor by) {
        return by.link().map(links::get);
    }

    /** The captains' and deputies' links of a club. */
    public ClubLinks linksOf(ClubId club) {
        return ClubLinks.of(links.values(), club);
    }

    /** Whether this link reads what its club keeps for itself: a captain's or deputy's that was let in. */
    public boolean isLetIn(Link link, Instant now) {
        return link.role() == Role.CAPTAIN
                && link.club().filter(club -> linksOf(club).isLetIn(link, now)).isPresent();
    }

    /** The squad in order of entry. */
    public List<Player> squad(ClubId club) {
        return players.values().stream()
                .filter(player -> player.club().equals(club))
                .toList();
    }
}
