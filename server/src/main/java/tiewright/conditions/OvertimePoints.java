package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** How points beyond the target count in differences. */
public enum OvertimePoints {
    AS_PLAYED("as-played"),
    CAPPED("capped");

    private final String code;

    OvertimePoints(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<OvertimePoints> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
