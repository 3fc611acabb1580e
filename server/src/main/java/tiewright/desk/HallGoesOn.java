package tiewright.desk;

import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Refusal;

/** Play goes on before a stop was to end. */
public record HallGoesOn() implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = Asked.byOfficial(given)
                .unless(
                        event.order().stop(event.about(), given.now()).isPresent(),
                        Refusal.of("desk.hall-is-not-stopped"));
        return asked.isFine() ? Accepted.of(new DrawFact.HallStopped(Optional.empty(), "")) : asked.refused();
    }
}
