package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

/** How a rubber ended. The side named in a retirement or walkover is the one that did not go on or did not play. */
public enum How {
    PLAYED("played"),
    RETIRED_HOME("retired-home"),
    RETIRED_AWAY("retired-away"),
    WALKOVER_HOME("walkover-home"),
    WALKOVER_AWAY("walkover-away"),
    VOID("void");

    private final String code;

    How(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<How> parse(String code) {
        return Arrays.stream(values()).filter(how -> how.code.equals(code)).findFirst();
    }

    /** The side that stopped or never came, if this is a retirement or a walkover. */
    public Optional<Side> missing() {
        return switch (this) {
            case RETIRED_HOME, WALKOVER_HOME -> Optional.of(Side.HOME);
            case RETIRED_AWAY, WALKOVER_AWAY -> Optional.of(Side.AWAY);
            case PLAYED, VOID -> Optional.empty();
        };
    }

    public boolean isWalkover() {
        return this == WALKOVER_HOME || this == WALKOVER_AWAY;
    }

    public boolean isRetirement() {
        return this == RETIRED_HOME || this == RETIRED_AWAY;
    }
}
