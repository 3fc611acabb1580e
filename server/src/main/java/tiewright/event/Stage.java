package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

public enum Stage {
    POOL("pool"),
    KNOCKOUT("knockout"),
    /** for the other places, among those who are out of the knockout */
    PLACING("placing");

    private final String code;

    Stage(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Stage> parse(String code) {
        return Arrays.stream(values()).filter(stage -> stage.code.equals(code)).findFirst();
    }
}
