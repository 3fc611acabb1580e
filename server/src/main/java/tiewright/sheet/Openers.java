package tiewright.sheet;

import java.util.List;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** Who opens where the organiser also captains a club: the neutral person who was chosen, or else the tool by itself. */
final class Openers {
    private Openers() {}

    static List<Refusal> whyNot(Event event, Actor by) {
        if (event.opening().filter(SetUpFact.OpeningChosen::organiserIsCaptain).isEmpty()) {
            return List.of();
        }
        return neutral(event)
                .map(neutral -> Gate.when(
                        event.opening().filter(chosen -> chosen.isNeutral(by)).isEmpty(),
                        Why.NEUTRAL_ONLY.refusal().with("neutral", neutral)))
                .orElseGet(() -> Gate.when(!by.equals(Exchanges.AUTOMATIC), Why.AUTOMATIC_ONLY.refusal()));
    }

    /** The label of the link of the neutral person who opens. */
    static Optional<String> neutral(Event event) {
        return event.opening()
                .filter(SetUpFact.OpeningChosen::organiserIsCaptain)
                .flatMap(SetUpFact.OpeningChosen::neutral);
    }
}
