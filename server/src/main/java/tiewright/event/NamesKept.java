package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

/** What stands for a player in results and sheets once private data are deleted. */
public enum NamesKept {
    /** The player's code alone. */
    CODES("codes"),

    /** First name and initial; of a minor, and of a name that cannot be shortened, the code alone. */
    INITIALS("initials");

    private final String code;

    NamesKept(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<NamesKept> parse(String code) {
        return Arrays.stream(values()).filter(names -> names.code.equals(code)).findFirst();
    }
}
