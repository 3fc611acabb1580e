package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Where the gaps of a short squad stand: empty from the bottom, or everybody moves up. */
public enum ShortSquad {
    BOTTOM_EMPTY("bottom-empty"),
    MOVE_UP("move-up");

    private final String code;

    ShortSquad(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<ShortSquad> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
