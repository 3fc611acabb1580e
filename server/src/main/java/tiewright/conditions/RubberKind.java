package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** Who may stand in a rubber. */
public enum RubberKind {
    /** anybody */
    OPEN("open"),
    /** two who play in women's rubbers */
    WOMEN("women"),
    /** two who play in men's rubbers */
    MEN("men"),
    /** one who plays in women's rubbers and one who plays in men's */
    MIXED("mixed");

    private final String code;

    RubberKind(String code) {
        this.code = code;
    }

    /** Whether two players who state this may stand in it together, in either column. */
    public boolean admits(Optional<Plays> one, Optional<Plays> other) {
        boolean women = one.equals(Optional.of(Plays.WOMEN)) && other.equals(Optional.of(Plays.WOMEN));
        boolean men = one.equals(Optional.of(Plays.MEN)) && other.equals(Optional.of(Plays.MEN));
        return switch (this) {
            case OPEN -> true;
            case WOMEN -> women;
            case MEN -> men;
            case MIXED -> one.isPresent() && other.isPresent() && !women && !men;
        };
    }

    public String code() {
        return code;
    }

    public static Optional<RubberKind> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
