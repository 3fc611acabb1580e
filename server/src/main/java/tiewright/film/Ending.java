package tiewright.film;

import java.util.Arrays;
import java.util.Optional;
import tiewright.scoring.SideNo;

/** How a rally ended. */
public enum Ending {
    /** A clean winner of the player. */
    EARNED("earned"),
    /** An error of the player under pressure. */
    FORCED("forced"),
    /** An error of the player on a ball usually made. */
    GAVE("gave"),
    /** Played again, no point. */
    REPLAY("replay"),
    /** Nobody could tell: never guessed, counted for nobody. */
    UNSURE("unsure");

    private final String code;

    Ending(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    /** Somebody won the rally, so a player is named. */
    public boolean namesPlayer() {
        return this != REPLAY && this != UNSURE;
    }

    /** The side that won when a player of this side is noted; empty where nobody won or nobody knows. */
    public Optional<SideNo> winner(SideNo sideOfPlayer) {
        return switch (this) {
            case EARNED -> Optional.of(sideOfPlayer);
            case FORCED, GAVE -> Optional.of(sideOfPlayer.other());
            case REPLAY, UNSURE -> Optional.empty();
        };
    }

    public static Optional<Ending> parse(String code) {
        return Arrays.stream(values())
                .filter(ending -> ending.code.equals(code))
                .findFirst();
    }
}
