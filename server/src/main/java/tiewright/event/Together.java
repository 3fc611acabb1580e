package tiewright.event;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Several decisions as one: each is asked about the event as the ones before it leave it, and either all are accepted or
 * nothing is done and every reason is told.
 */
public record Together(List<Decision> decisions) implements Decision {
    public Together {
        decisions = List.copyOf(decisions);
        if (decisions.isEmpty()) {
            throw new IllegalArgumentException("nothing to decide");
        }
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Event now = event;
        List<Fact> facts = new ArrayList<>();
        List<PrivateNote> notes = new ArrayList<>();
        List<Refusal> reasons = new ArrayList<>();
        for (Decision decision : decisions) {
            Outcome outcome = decision.decide(now, given);
            if (outcome instanceof Accepted accepted) {
                facts.addAll(accepted.facts());
                notes.addAll(accepted.notes());
                now = now.after(accepted.facts(), given);
            } else {
                reasons.addAll(((Refused) outcome).reasons());
            }
        }
        return reasons.isEmpty()
                ? new Accepted(facts, notes)
                : new Refused(reasons.stream().distinct().toList());
    }

    @Override
    public Set<SealedRef> needs(Event event) {
        Set<SealedRef> needs = new HashSet<>();
        decisions.forEach(decision -> needs.addAll(decision.needs(event)));
        return needs;
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return decisions.stream().anyMatch(decision -> decision.isStaledBy(fact));
    }
}
