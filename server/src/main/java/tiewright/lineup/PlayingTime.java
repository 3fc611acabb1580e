package tiewright.lineup;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.PlayerId;

/**
 * The playing time that the captain has promised: so many rubbers for everybody by the end of this tie, and so many for single
 * players by the end of the day; the larger of the two counts.
 *
 * <p>What is promised by the end of the day can wait: this tie owes of it only what the other ties ahead can no longer give. A
 * promise ranks after the tie chance: it decides among sheets that are equal to a tenth of a percentage point.
 *
 * @param floor rubbers for each player of the squad who is present; 0 = nothing promised
 * @param promised rubbers by the end of the day, for single players
 * @param played rubbers of today, those that are named and have still to be played among them; nobody named = none
 * @param others what the other ties that are sure to come today can give
 */
public record PlayingTime(
        int floor, Map<PlayerId, Integer> promised, Map<PlayerId, Integer> played, List<TiePlaces> others) {
    public static final PlayingTime NOTHING_PROMISED = new PlayingTime(0, Map.of());

    public PlayingTime {
        promised = Map.copyOf(promised);
        played = Map.copyOf(played);
        others = List.copyOf(others);
        if (floor < 0 || promised.values().stream().anyMatch(rubbers -> rubbers < 0)) {
            throw new IllegalArgumentException("promises are 0 rubbers or more, not " + floor + " and " + promised);
        }
    }

    /** A floor for everybody alone. */
    public PlayingTime(int floor, Map<PlayerId, Integer> played) {
        this(floor, Map.of(), played, List.of());
    }

    public PlayingTime withFloor(int other) {
        return new PlayingTime(other, promised, played, others);
    }

    /** The promises to some players alone, and no floor. */
    public PlayingTime onlyTo(Collection<PlayerId> players) {
        Map<PlayerId, Integer> some = new HashMap<>(promised);
        some.keySet().retainAll(players);
        return new PlayingTime(0, some, played, others);
    }

    /** Rubbers missing to the floor so far. */
    public int toFloor(PlayerId player) {
        return Math.max(0, floor - played.getOrDefault(player, 0));
    }

    /** Rubbers missing so far to what the player was promised by the end of the day. */
    public int toPromise(PlayerId player) {
        return Math.max(0, promised.getOrDefault(player, 0) - played.getOrDefault(player, 0));
    }
}
