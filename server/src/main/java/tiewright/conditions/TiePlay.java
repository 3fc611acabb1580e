package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** How the rubbers of a tie come on court. */
public enum TiePlay {
    /** all of them at once, on courts beside each other */
    SIDE_BY_SIDE("side-by-side"),
    /** each on its own, on whatever court is next */
    RUBBER_BY_RUBBER("rubber-by-rubber");

    private final String code;

    TiePlay(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<TiePlay> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
