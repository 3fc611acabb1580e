package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Who plays when the rubbers of a tie finish level. */
public enum DeciderKind {
    NONE("none"),
    ANY_TWO("any-two"),
    ONE_FROM_EACH("one-from-each"),
    SINGLES_TURNS("singles-turns");

    private final String code;

    DeciderKind(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<DeciderKind> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
