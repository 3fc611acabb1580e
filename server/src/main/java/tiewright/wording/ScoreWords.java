package tiewright.wording;

import java.time.ZoneOffset;
import tiewright.scoring.ScoreFault;

/** Why a score cannot stand, in a sentence. */
public final class ScoreWords {
    private static final Words ENGLISH = Words.ofCodes(ZoneOffset.UTC);

    private ScoreWords() {}

    /** In English, as commands and plain files say it. */
    public static String sentence(ScoreFault fault) {
        return sentence(fault, ENGLISH);
    }

    static String sentence(ScoreFault fault, Words words) {
        String key = "scoring."
                + fault.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        return words.say(key, "score", fault.score(), "number", fault.number(), "game", fault.game());
    }
}
