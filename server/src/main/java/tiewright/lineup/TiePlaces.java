package tiewright.lineup;

import java.util.Set;
import tiewright.event.PlayerId;

/**
 * What a tie ahead can give at best.
 *
 * @param all seats on the sheet
 * @param each rubbers that one player may play in it
 * @param out who cannot have any: not here then, or to rest by the captain's wish
 */
public record TiePlaces(int all, int each, Set<PlayerId> out) {
    public TiePlaces {
        out = Set.copyOf(out);
        if (all < 0 || each < 0) {
            throw new IllegalArgumentException("no tie gives " + all + " places, " + each + " a player");
        }
    }

    public int most(PlayerId player) {
        return out.contains(player) ? 0 : each;
    }
}
