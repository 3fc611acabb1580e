package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Link;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** Takes out a club that was entered by mistake, its squad and its links. A club that stands in the draw withdraws instead. */
public record RemoveClub(ClubId club) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        boolean drawn = event.ties().values().stream().anyMatch(tie -> tie.has(club))
                || event.pools().values().stream().anyMatch(pool -> pool.contains(club));
        return Checks.byOrganiser(given)
                .refuseIf(
                        event.club(club).isEmpty(),
                        Refusal.of("setup.no-such-club").with("club", club).at("club"))
                .refuseIf(
                        drawn,
                        Refusal.of("setup.club-is-drawn").with("club", club).at("club"))
                .then(() -> facts(event));
    }

    private List<Fact> facts(Event event) {
        List<Fact> facts = new ArrayList<>(List.of(new SetUpFact.ClubRemoved(club)));
        event.links().values().stream()
                .filter(link ->
                        !link.revoked() && link.club().filter(club::equals).isPresent())
                .map(Link::name)
                .forEach(link -> facts.add(new SetUpFact.LinkRevoked(link)));
        return facts;
    }
}
