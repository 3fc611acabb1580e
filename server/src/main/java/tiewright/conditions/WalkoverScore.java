package tiewright.conditions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.scoring.Awarded;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** What a rubber that was not played counts in the table. */
public enum WalkoverScore {
    /** the target to nil in as many games as win it */
    TARGET_ZERO("target-0"),
    /** the rubber and nothing else: no game, no point */
    NOTHING("0-0");

    private final String code;

    WalkoverScore(String code) {
        this.code = code;
    }

    List<Score> of(Format format, int bestOf, SideNo missing) {
        return this == NOTHING ? List.of(Score.of(0, 0)) : Awarded.walkover(format, bestOf, missing);
    }

    public String code() {
        return code;
    }

    public static Optional<WalkoverScore> parse(String code) {
        return Arrays.stream(values()).filter(value -> value.code.equals(code)).findFirst();
    }
}
