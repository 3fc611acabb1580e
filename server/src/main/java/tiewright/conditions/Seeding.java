package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** How seeds are placed in the knockout. */
public enum Seeding {
    TENNIS("tennis"),
    HALVES("halves");

    private final String code;

    Seeding(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Seeding> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
