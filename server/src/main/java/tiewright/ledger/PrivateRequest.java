package tiewright.ledger;

import java.util.OptionalLong;
import tiewright.event.Actor;
import tiewright.event.ClubId;

/**
 * Who asks for a change among what one club alone knows, and how to know the same asking again.
 *
 * @param club whose notes they are; an official who marks somebody as hurt asks for the player's club
 * @param key new for each thing asked, 1 to {@value Request#LONGEST_KEY} characters; sent again it is answered as before and
 *     changes nothing. Good within the club alone
 * @param seen the number of the club's last change that the form was made from, see {@link Ledger#noted}; empty where the form
 *     can never be stale
 */
public record PrivateRequest(ClubId club, String key, Actor by, OptionalLong seen) {
    public PrivateRequest {
        Request.of(key, by); // the same bounds
    }

    /** A request that cannot be stale. */
    public static PrivateRequest of(ClubId club, String key, Actor by) {
        return new PrivateRequest(club, key, by, OptionalLong.empty());
    }
}
