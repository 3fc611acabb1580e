package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Where a tie ends as soon as one club can no longer be caught. */
public enum StopWhenDecided {
    NONE("none"),
    KNOCKOUT("knockout"),
    ALL("all");

    private final String code;

    StopWhenDecided(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<StopWhenDecided> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
