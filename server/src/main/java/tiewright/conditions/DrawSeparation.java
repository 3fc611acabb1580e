package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Which clubs the draw keeps apart. */
public enum DrawSeparation {
    NONE("none"),
    TOWN("town");

    private final String code;

    DrawSeparation(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<DrawSeparation> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
