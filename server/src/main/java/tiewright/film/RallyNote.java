package tiewright.film;

import java.util.Optional;
import tiewright.event.PlayerId;

/**
 * One rally as it was charted.
 *
 * @param number as noted; rallies are in its order
 * @param player who hit the winner, or who erred; there where the ending names somebody
 * @param server where the charter noted one; else it follows from the rallies before
 */
public record RallyNote(
        int number, Ending ending, Optional<PlayerId> player, Optional<PlayerId> server, Detail detail) {
    public RallyNote {
        if (ending.namesPlayer() && player.isEmpty()) {
            throw new IllegalArgumentException("a rally that ends " + ending.code() + " names a player");
        }
    }

    /** How it ended, and nothing else. */
    public static RallyNote of(int number, Ending ending, PlayerId player) {
        return new RallyNote(number, ending, Optional.of(player), Optional.empty(), Detail.NONE);
    }

    /** A rally that nobody won, or of which nobody can tell. */
    public static RallyNote of(int number, Ending ending) {
        return new RallyNote(number, ending, Optional.empty(), Optional.empty(), Detail.NONE);
    }

    public RallyNote servedBy(PlayerId noted) {
        return new RallyNote(number, ending, player, Optional.of(noted), detail);
    }

    public RallyNote with(Detail more) {
        return new RallyNote(number, ending, player, server, more);
    }
}
