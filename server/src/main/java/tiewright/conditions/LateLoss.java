package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;

/** What a pair that is late can lose, step by step, each to be claimed. */
public enum LateLoss {
    /** the rubber, when the minutes are over */
    RUBBER("rubber-claimable"),
    /** a rubber when the minutes are over, and one more of the tie for every 15 minutes after that */
    A_RUBBER_EACH_15("ladder-one-rubber-each-15"),
    /** a game when the minutes are over, the rubber when they are over again, the tie after as many more */
    GAME_THEN_RUBBER("game-then-rubber");

    private final String code;

    LateLoss(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<LateLoss> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
