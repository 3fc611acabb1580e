package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

/** The two blind exchanges of a tie: the sheet of its rubbers, and the pair for a decider. */
public enum SheetKind {
    RUBBERS("rubbers"),
    DECIDER("decider");

    private final String code;

    SheetKind(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<SheetKind> parse(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code.equals(code)).findFirst();
    }
}
