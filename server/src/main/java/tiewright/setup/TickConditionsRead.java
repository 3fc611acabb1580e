package tiewright.setup;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** A captain says that the conditions in force were read. */
public record TickConditionsRead(ClubId club, int version) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        int current = event.conditionsVersion();
        boolean again = version == current && event.conditionsRead().getOrDefault(club, 0) >= version;
        return new Checks()
                .refuseIf(!Checks.isCaptainOf(given.by(), club), Refusal.of("setup.captain-only"))
                .refuseIf(
                        event.club(club).isEmpty(),
                        Refusal.of("setup.no-such-club").with("club", club).at("club"))
                .refuseIf(current == 0, Refusal.of("setup.no-conditions").at("version"))
                .refuseIf(
                        current > 0 && version != current,
                        Refusal.of("setup.not-current-version")
                                .with("version", version)
                                .with("current", current)
                                .at("version"))
                .refuseIf(
                        current > 0 && again,
                        Refusal.of("setup.read-already")
                                .with("version", version)
                                .at("version"))
                .then(() -> List.of(new SetUpFact.ConditionsRead(club, version)));
    }
}
