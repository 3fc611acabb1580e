package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

/** What published conditions let follow when a side was not as it should be. Only a ruling applies one of them. */
public enum Penalty {
    NONE("let-stand"),
    RUBBERS("rubbers-lost"),
    TIE("tie-lost");

    private final String code;

    Penalty(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Penalty> parse(String code) {
        return Arrays.stream(values())
                .filter(penalty -> penalty.code.equals(code))
                .findFirst();
    }
}
