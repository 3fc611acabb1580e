package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** The rubbers that a player may stand in beside open ones, as the player states it. */
public enum Plays {
    WOMEN("women"),
    MEN("men");

    private final String code;

    Plays(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Plays> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
