package tiewright.http.visit;

import tiewright.event.SetUpFact;
import tiewright.wording.Words;

/** Who opens the sheets here, in words. */
public final class OpeningWords {
    private OpeningWords() {}

    public static String of(Words words, SetUpFact.OpeningChosen chosen) {
        if (!chosen.organiserIsCaptain()) {
            return words.say("page-visit.opening.nobody-plays");
        }
        return chosen.neutral()
                .map(name -> words.say("page-visit.opening.by-a-neutral", "name", name))
                .orElseGet(() -> words.say("page-visit.opening.by-themselves"));
    }
}
