package tiewright.plainfiles;

import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** Brings an event in, everything at once. Refused where there is an event already: two cannot be mixed. */
public record ImportEvent(List<Fact> facts, List<PrivateNote> notes) implements Decision {
    public ImportEvent {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }

    /** @throws IllegalArgumentException if the folder has faults */
    public static ImportEvent of(EventFolder folder) {
        if (!folder.faults().isEmpty()) {
            throw new IllegalArgumentException("a folder with faults cannot be brought in: "
                    + folder.faults().get(0));
        }
        return new ImportEvent(folder.facts(), folder.notes());
    }

    @Override
    public Outcome decide(Event event, Given given) {
        boolean isTaken = event.about().isPresent()
                || !event.clubs().isEmpty()
                || !event.ties().isEmpty();
        if (isTaken) {
            return Refused.because(event.about()
                    .map(about -> Refusal.of("import.event-exists").with("event", about.name()))
                    .orElse(Refusal.of("import.event-begun")));
        }
        return new Accepted(facts.stream().map(fact -> next(event, fact)).toList(), notes);
    }

    /** Conditions that were published before the import have used up their version numbers. */
    private static Fact next(Event event, Fact fact) {
        if (fact.kind() != FactKind.CONDITIONS_PUBLISHED) {
            return fact;
        }
        SetUpFact.ConditionsPublished conditions = (SetUpFact.ConditionsPublished) fact;
        return new SetUpFact.ConditionsPublished(
                event.conditionsVersion() + 1, conditions.conditions(), conditions.ruling());
    }
}
