package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

/** What becomes of a wrong score that others have built on. */
public enum CorrectionChoice {
    /** the score as entered stands, by ruling; nothing changes */
    LET_STAND("let-stand"),
    /** the right score counts, and what was built on the wrong one is played again */
    REPLAY("replay"),
    /** the right score counts in the record; who plays whom stays */
    RECORD_ONLY("record-only");

    private final String code;

    CorrectionChoice(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<CorrectionChoice> parse(String code) {
        return Arrays.stream(values())
                .filter(choice -> choice.code.equals(code))
                .findFirst();
    }
}
