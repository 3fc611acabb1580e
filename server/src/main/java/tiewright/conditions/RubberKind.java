package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Who may stand in a rubber. */
public enum RubberKind {
    /** anybody */
    OPEN("open"),
    /** two who play in women's rubbers */
    WOMEN("women"),
    /** two who play in men's rubbers */
    MEN("men"),
    /** one who plays in women's rubbers and one who plays in men's */
    MIXED("mixed");

    private final String code;

    RubberKind(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<RubberKind> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
