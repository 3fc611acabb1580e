package tiewright.http.visit;

import tiewright.event.SetUpFact;

/** Who opens the sheets here, in words. */
public final class OpeningWords {
    private OpeningWords() {}

    public static String of(SetUpFact.OpeningChosen chosen) {
        if (!chosen.organiserIsCaptain()) {
            return "No organiser captains or plays for a club here.";
        }
        return "An organiser also captains or plays for a club here; sheets are opened "
                + chosen.neutral()
                        .map(name -> "by " + name + ", who is neutral.")
                        .orElse("by themselves at the deadline, by nobody's hand.");
    }
}
