package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.PlayFact;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** A wrong call is taken back; both stay in the log. What has a card was played and keeps its call. */
public record TakeBackCall(TieId tie, Optional<RubberNo> rubber, String reason) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Asked asked = Asked.byOfficial(given).text("reason", reason, Asked.LONG).all(called(found.get()));
        return asked.isFine() ? Accepted.of(new PlayFact.CallTakenBack(tie, rubber, reason.strip())) : asked.refused();
    }

    private List<Refusal> called(Tie found) {
        List<RubberNo> called = found.calls().keySet().stream()
                .filter(no -> rubber.map(no::equals).orElse(!no.isDecider()))
                .toList();
        if (called.isEmpty()) {
            return List.of(Refusal.of("desk.not-called").with("tie", tie).at("rubber"));
        }
        return called.stream()
                .filter(no -> Courts.hasEntry(found, no))
                .map(no -> Refusal.of("desk.rubber-has-card")
                        .with("rubber", no)
                        .with("tie", tie)
                        .at("rubber"))
                .toList();
    }
}
