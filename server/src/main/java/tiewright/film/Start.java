package tiewright.film;

import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Court;
import tiewright.scoring.Format;
import tiewright.scoring.GameState;
import tiewright.scoring.SideNo;

/**
 * A game before its first rally: who stands where, and who serves.
 *
 * <p>The first serve of a game comes from the right, so whoever serves first stands right, whatever the notes say of the halves;
 * {@link #isFirstServerNotedLeft} tells whether they say otherwise.
 *
 * @param right1 noted on the right of side one, facing the net
 */
public record Start(
        Format format, PlayerId firstServer, PlayerId right1, PlayerId left1, PlayerId right2, PlayerId left2) {
    public Start {
        List<PlayerId> four = List.of(right1, left1, right2, left2);
        if (four.stream().distinct().count() < four.size() || !four.contains(firstServer)) {
            throw new IllegalArgumentException(
                    "four different players, one of whom serves first, not " + firstServer + " of " + four);
        }
    }

    /** Everybody on court, side one first, right before left. */
    public List<PlayerId> players() {
        return List.of(right1, left1, right2, left2);
    }

    public Pair pair(SideNo side) {
        return side == SideNo.ONE ? Pair.of(right1, left1) : Pair.of(right2, left2);
    }

    /** The side of a player of this game. */
    public SideNo side(PlayerId player) {
        return pair(SideNo.ONE).has(player) ? SideNo.ONE : SideNo.TWO;
    }

    public Optional<SideNo> sideOf(PlayerId player) {
        return players().contains(player) ? Optional.of(side(player)) : Optional.empty();
    }

    public boolean isFirstServerNotedLeft() {
        return firstServer.equals(left1) || firstServer.equals(left2);
    }

    /** Who stood there when the game began. */
    PlayerId at(SideNo side, Court half) {
        if (side == side(firstServer)) {
            return half == Court.RIGHT ? firstServer : pair(side).partnerOf(firstServer);
        }
        boolean right = half == Court.RIGHT;
        return side == SideNo.ONE ? right ? right1 : left1 : right ? right2 : left2;
    }

    GameState state() {
        return GameState.start(format, side(firstServer));
    }
}
