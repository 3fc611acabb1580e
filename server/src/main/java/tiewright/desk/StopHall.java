package tiewright.desk;

import java.time.LocalTime;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Refusal;

/**
 * Play stands still on every court until a time of the event's day, for rain say. Everybody reads it; nothing is forbidden by it.
 * It is over when that time has come, or by {@link HallGoesOn}.
 */
public record StopHall(LocalTime until, String reason) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        boolean ahead = event.about()
                .filter(about -> given.now().isBefore(about.at(until)))
                .isPresent();
        Asked asked = Asked.byOfficial(given)
                .unless(
                        ahead,
                        Refusal.of("desk.stop-is-over").with("until", until).at("from"))
                .text("reason", reason, Asked.LONG);
        return asked.isFine()
                ? Accepted.of(new DrawFact.HallStopped(Optional.of(until), reason.strip()))
                : asked.refused();
    }
}
