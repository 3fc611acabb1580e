package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** What a rubber that was not played counts in the table. */
public enum WalkoverScore {
    TARGET_ZERO("target-0");

    private final String code;

    WalkoverScore(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<WalkoverScore> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
