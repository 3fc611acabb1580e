package tiewright.sheet;

import java.util.List;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** Who may open when the organiser also captains a club: the neutral person who was chosen, or the tool by itself. */
final class Openers {
  private Openers() {}

  static List<Refusal> whyNot(Event event, Actor by) {
    Optional<SetUpFact.OpeningChosen> chosen = event.opening().filter(SetUpFact.OpeningChosen::organiserIsCaptain);
    if (chosen.isEmpty() || by.equals(Exchanges.AUTOMATIC)) {
      return List.of();
    }
    return chosen.get().neutral()
        .map(neutral -> Gate.when(!by.name().equals(neutral), Why.NEUTRAL_ONLY.refusal().with("neutral", neutral)))
        .orElseGet(() -> List.of(Why.AUTOMATIC_ONLY.refusal()));
  }
}
