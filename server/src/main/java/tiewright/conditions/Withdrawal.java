package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** What a withdrawal does to the ties of the club: its results go, stay, or its unplayed ties are lost. */
public enum Withdrawal {
    ANNUL("annul"),
    KEEP("keep"),
    AWARD("award");

    private final String code;

    Withdrawal(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Withdrawal> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
