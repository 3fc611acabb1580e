package tiewright.desk;

import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.PlayFact;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** An official says that play goes on. */
public record ResumePlay(TieId tie, RubberNo rubber) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Asked asked = Asked.byOfficial(given)
                .unless(
                        found.get().stopped().containsKey(rubber),
                        Refusal.of("desk.not-stopped")
                                .with("rubber", rubber)
                                .with("tie", tie)
                                .at("rubber"));
        return asked.isFine() ? Accepted.of(new PlayFact.PlayResumed(tie, rubber)) : asked.refused();
    }
}
