package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** How the order of strength binds a sheet. */
public enum OrderOfStrength {
    NONE("none"),
    RANK_SUM("rank-sum"),
    STRONGEST_FIRST("strongest-first");

    private final String code;

    OrderOfStrength(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<OrderOfStrength> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
