package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** What the conditions foresee for a sheet that is not in at the deadline. */
public enum LateSheet {
    GRACE("grace"),
    DESK_RECEIPT("desk-receipt"),
    SHOWN_RECEIPT("shown-receipt"),
    LAST_LEGAL("last-legal"),
    STRENGTH_ORDER("strength-order"),
    REFEREE_FILLS("referee-fills"),
    FORFEIT("forfeit");

    private final String code;

    LateSheet(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<LateSheet> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
