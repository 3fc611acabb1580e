package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** How a retired rubber counts. */
public enum RetirementScore {
    KEEP_POINTS("keep-points"),
    ZERO("zero"),
    AS_IT_STOOD("as-it-stood");

    private final String code;

    RetirementScore(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<RetirementScore> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
