package tiewright.desk;

import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/**
 * The desk saw a player, or notes that the player is not here. The time is that of the receipt. Said again the other way
 * it takes the first back.
 */
public record CheckIn(PlayerId player, boolean present) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Player> found = event.player(player);
        if (found.isEmpty()) {
            return Decision.Refused.because(
                    Refusal.of("desk.no-such-player").with("player", player).at("player"));
        }
        Asked asked = Asked.byOfficial(given);
        if (present) {
            found.get()
                    .checkedInAt()
                    .ifPresent(at -> asked.unless(
                            false,
                            Refusal.of("desk.already-in")
                                    .with("player", player)
                                    .with("at", at)
                                    .at("player")));
        } else {
            asked.unless(
                    !found.get().absent(),
                    Refusal.of("desk.already-absent").with("player", player).at("player"));
        }
        return asked.isFine() ? Accepted.of(new SetUpFact.CheckedIn(player, present)) : asked.refused();
    }
}
