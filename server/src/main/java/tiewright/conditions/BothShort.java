package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** What happens to a rubber for which neither club has a pair. */
public enum BothShort {
    SHRINK_TARGET("shrink-target"),
    DOUBLE_DEFAULT("double-default");

    private final String code;

    BothShort(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<BothShort> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
