package tiewright.wording;

import tiewright.scoring.ScoreFault;

/** Why a score cannot stand, in a sentence. */
public final class ScoreWords {
    private static final Text TEXT = Text.of("scoring");

    private ScoreWords() {}

    public static String sentence(ScoreFault fault) {
        String key = "score."
                + fault.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        return TEXT.say(key, fault.score().toString(), fault.number(), fault.game());
    }
}
