package tiewright.desk;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Player;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** A club is here: everybody of it whom nobody has asked about yet. Whoever was noted as not here stays so. */
public record CheckInClub(ClubId club) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        if (!event.clubs().containsKey(club)) {
            return Decision.Refused.because(
                    Refusal.of("desk.no-such-club").with("club", club).at("club"));
        }
        List<Fact> facts = event.squad(club).stream()
                .filter(player -> player.checkedInAt().isEmpty() && !player.absent())
                .map(Player::id)
                .map(player -> (Fact) new SetUpFact.CheckedIn(player, true))
                .toList();
        Asked asked = Asked.byOfficial(given)
                .unless(
                        !facts.isEmpty(),
                        Refusal.of("desk.nobody-left-to-check-in")
                                .with("club", club)
                                .at("club"));
        return asked.isFine() ? new Accepted(facts, List.of()) : asked.refused();
    }
}
