package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Link;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;

/**
 * Says how sheets are opened where an organiser also captains a club: by a neutral second person, or by themselves. A change
 * after the first sealed sheet is a numbered notice.
 *
 * @param neutral the label of that person's desk or referee link; the choice holds for that link and no other
 */
public record ChooseOpening(boolean organiserIsCaptain, Optional<String> neutral) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        List<Link> may = neutral.map(label -> mayOpen(event, label)).orElse(List.of());
        SetUpFact.OpeningChosen chosen = new SetUpFact.OpeningChosen(
                organiserIsCaptain,
                Plain.of(neutral),
                may.stream().map(Link::name).findFirst());
        return Checks.byOrganiser(given)
                .line("neutral", neutral)
                .refuseIf(
                        !organiserIsCaptain && chosen.neutral().isPresent(),
                        Refusal.of("setup.neutral-not-needed").at("neutral"))
                .refuse(chosen.neutral()
                        .filter(label -> may.isEmpty())
                        .map(label -> Refusal.of("setup.neutral-has-no-link")
                                .with("label", label)
                                .at("neutral")))
                .refuse(chosen.neutral()
                        .filter(label -> may.size() > 1)
                        .map(label -> Refusal.of("setup.neutral-has-two-links")
                                .with("label", label)
                                .at("neutral")))
                .refuseIf(event.opening().filter(chosen::equals).isPresent(), Refusal.of("setup.opening-unchanged"))
                .then(() -> facts(event, chosen));
    }

    /** The links of the desk or the referee with this label: one, but where older versions let two have the same. */
    private static List<Link> mayOpen(Event event, String label) {
        return event.links().values().stream()
                .filter(link -> !link.revoked()
                        && link.label().equals(label)
                        && (link.role() == Role.DESK || link.role() == Role.REFEREE))
                .toList();
    }

    private static List<Fact> facts(Event event, SetUpFact.OpeningChosen chosen) {
        List<Fact> facts = new ArrayList<>(List.of(chosen));
        if (event.isFrozen()) {
            facts.add(Notices.changed(
                    event,
                    Saying.of("notices.who-opens"),
                    event.opening().map(ChooseOpening::said).orElse(Saying.of("notices.opened-by-desk")),
                    said(chosen)));
        }
        return facts;
    }

    private static Saying said(SetUpFact.OpeningChosen chosen) {
        return chosen.neutral()
                .map(Saying::typed)
                .orElseGet(() -> Saying.of(
                        chosen.organiserIsCaptain() ? "notices.opened-by-themselves" : "notices.opened-by-desk"));
    }

    /** What somebody else chose meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact.kind() == FactKind.OPENING_CHOSEN;
    }
}
