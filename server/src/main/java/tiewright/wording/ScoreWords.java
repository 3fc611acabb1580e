package tiewright.wording;

import tiewright.scoring.ScoreFault;

/** Why a score cannot stand, in a sentence. */
final class ScoreWords {
    private ScoreWords() {}

    static String sentence(ScoreFault fault, Words words) {
        String key = "scoring."
                + fault.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        return words.say(key, "score", fault.score(), "number", fault.number(), "game", fault.game());
    }
}
