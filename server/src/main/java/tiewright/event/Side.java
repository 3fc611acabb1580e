package tiewright.event;

import java.util.Optional;

/** The two sides of a tie. */
public enum Side {
    HOME("home"),
    AWAY("away");

    private final String code;

    Side(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    /** The side that has more, by the home side's number less the away side's; empty where they are level. */
    static Optional<Side> ahead(int difference) {
        return difference > 0 ? Optional.of(HOME) : difference < 0 ? Optional.of(AWAY) : Optional.empty();
    }

    public Side other() {
        return this == HOME ? AWAY : HOME;
    }

    public static Side of(String code) {
        return code.equals(HOME.code) ? HOME : code.equals(AWAY.code) ? AWAY : unknown(code);
    }

    private static Side unknown(String code) {
        throw new IllegalArgumentException("a side is home or away, not \"" + code + "\"");
    }
}
