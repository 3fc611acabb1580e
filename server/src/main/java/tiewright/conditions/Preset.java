package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Four whole sets of conditions to start from, each under its printed name. */
public enum Preset {
    CLUB_DAY("Club day"),
    STRICT_ORDER("Strict order"),
    EVERYONE_PLAYS("Everyone plays"),
    TIMED("Timed");

    private final String printed;

    Preset(String printed) {
        this.printed = printed;
    }

    public String printed() {
        return printed;
    }

    public static Optional<Preset> parse(String printed) {
        return Arrays.stream(values())
                .filter(preset -> preset.printed.equals(printed))
                .findFirst();
    }
}
