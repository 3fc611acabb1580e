package tiewright.ledger;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import tiewright.event.Actor;

/**
 * Who asks, and how to know the same asking again.
 *
 * @param key made by the client, new for each thing asked (a UUID), 1 to {@value #LONGEST_KEY} characters; sent again it
 *     is answered with the first answer and changes nothing
 * @param deviceTime what the device's clock said
 * @param seenSeq the last fact that the form was made from; empty where the form can never be stale
 */
public record Request(String key, Actor by, Optional<Instant> deviceTime, OptionalLong seenSeq) {
    public static final int LONGEST_KEY = 80;
    public static final int LONGEST_DEVICE = 80;
    public static final int LONGEST_NAME = 200;

    public Request {
        checked("key", key, 1, LONGEST_KEY);
        checked("device name", by.device(), 0, LONGEST_DEVICE);
        checked("label", by.name(), 0, LONGEST_NAME);
    }

    /** A request that cannot be stale and comes from no device with a clock of its own. */
    public static Request of(String key, Actor by) {
        return new Request(key, by, Optional.empty(), OptionalLong.empty());
    }

    private static void checked(String what, String text, int shortest, int longest) {
        if (text.length() < shortest || text.length() > longest) {
            throw new IllegalArgumentException(
                    "a " + what + " has " + shortest + " to " + longest + " characters, not " + text.length());
        }
    }
}
