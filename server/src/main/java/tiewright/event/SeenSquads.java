package tiewright.event;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import tiewright.conditions.OrderOfStrength;

/**
 * Squads as somebody may see them: a ranking of players is read by officials and by the captain of the club, and by everybody
 * only where the conditions publish one.
 */
final class SeenSquads {
    private final Event event;
    private final Viewer viewer;

    SeenSquads(Event event, Viewer viewer) {
        this.event = event;
        this.viewer = viewer;
    }

    private boolean isRanked(ClubId club) {
        return event.conditions().orderOfStrength() != OrderOfStrength.NONE
                || viewer.role().isOfficial()
                || viewer.isCaptainOf(club);
    }

    List<Player> all() {
        return event.players().values().stream().map(this::seen).toList();
    }

    Optional<Player> player(PlayerId id) {
        return event.player(id).map(this::seen);
    }

    private Player seen(Player player) {
        return isRanked(player.club()) ? player : player.ranked(OptionalInt.empty());
    }

    /** In the order of entry, which often is that of strength; by name for those who may not read it. */
    List<Player> squad(ClubId club, Function<PlayerId, String> name) {
        List<Player> squad = event.squad(club);
        return isRanked(club)
                ? squad
                : squad.stream()
                        .map(this::seen)
                        .sorted(Comparator.comparing(player -> name.apply(player.id())))
                        .toList();
    }
}
