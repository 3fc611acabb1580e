package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** When the lateness clock starts. */
public enum ClockStarts {
    CALL("call"),
    SCHEDULE("schedule"),
    COURT_FREE("court-free");

    private final String code;

    ClockStarts(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<ClockStarts> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
