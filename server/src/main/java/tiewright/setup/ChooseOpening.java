package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/**
 * Says how sheets are opened where an organiser also captains a club: by a neutral second person, or by themselves. A change
 * after the first sealed sheet is a numbered notice.
 */
public record ChooseOpening(boolean organiserIsCaptain, Optional<String> neutral) implements Decision {
  @Override
  public Outcome decide(Event event, Given given) {
    SetUpFact.OpeningChosen chosen = new SetUpFact.OpeningChosen(organiserIsCaptain, Plain.of(neutral));
    return Checks.byOrganiser(given)
        .line("neutral", neutral)
        .refuseIf(!organiserIsCaptain && chosen.neutral().isPresent(), Refusal.of("setup.neutral-not-needed").at("neutral"))
        .refuseIf(event.opening().filter(chosen::equals).isPresent(), Refusal.of("setup.opening-unchanged"))
        .then(() -> facts(event, chosen));
  }

  private static List<Fact> facts(Event event, SetUpFact.OpeningChosen chosen) {
    List<Fact> facts = new ArrayList<>(List.of(chosen));
    if (event.isFrozen()) {
      facts.add(Notices.changed(
          event, "Who opens the sheets", event.opening().map(ChooseOpening::said).orElse("the desk"), said(chosen), ""));
    }
    return facts;
  }

  private static String said(SetUpFact.OpeningChosen chosen) {
    return chosen.neutral().orElse(chosen.organiserIsCaptain() ? "they open by themselves" : "the desk");
  }

  /** What somebody else chose meanwhile. */
  @Override
  public boolean isStaledBy(Fact fact) {
    return fact.kind() == FactKind.OPENING_CHOSEN;
  }
}
