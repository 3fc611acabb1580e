package tiewright.lineup;

import java.util.Map;
import tiewright.event.PlayerId;

/**
 * The playing time that the captain has promised: so many rubbers for everybody by the end of this tie.
 *
 * <p>A promise ranks after the tie chance: it decides among sheets that are equal to a tenth of a percentage point.
 *
 * @param floor rubbers for each player of the squad who is present; 0 = nothing promised
 * @param played rubbers played so far today; nobody named = none
 */
public record PlayingTime(int floor, Map<PlayerId, Integer> played) {
  public static final PlayingTime NOTHING_PROMISED = new PlayingTime(0, Map.of());

  public PlayingTime {
    played = Map.copyOf(played);
    if (floor < 0) {
      throw new IllegalArgumentException("a floor of " + floor + " rubbers");
    }
  }

  /** Rubbers missing to the floor after playing so many more. */
  int missing(PlayerId player, int more) {
    return Math.max(0, floor - played.getOrDefault(player, 0) - more);
  }
}
