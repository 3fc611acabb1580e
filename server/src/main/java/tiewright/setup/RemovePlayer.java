package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;

/**
 * Takes a player out of a squad, with the player's links. Nobody who stands on an opened sheet is taken out, and nobody of a
 * club one of whose sheets is sealed, for it might name the player.
 */
public record RemovePlayer(PlayerId player) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Player> found = event.player(player);
        if (found.isEmpty()) {
            return Decision.Refused.because(Refusal.of("setup.no-such-player")
                    .with("code", player.code())
                    .at("player"));
        }
        ClubId club = found.get().club();
        Checks checks = new Checks().refuseAll(Squads.mayAlter(event, given, club));
        if (checks.allFine()) {
            checks.refuse(Squads.playsIn(event, player)
                            .map(tie -> Refusal.of("setup.player-on-a-sheet")
                                    .with("player", player)
                                    .with("tie", tie)
                                    .at("player")))
                    .refuse(Squads.sealedFor(event, club)
                            .map(tie -> Refusal.of("setup.sheet-is-sealed")
                                    .with("club", club)
                                    .with("tie", tie)
                                    .at("player")));
        }
        return checks.then(() -> facts(event, club));
    }

    private List<Fact> facts(Event event, ClubId club) {
        List<Fact> facts = new ArrayList<>(List.of(new SetUpFact.PlayerRemoved(player)));
        event.links().values().stream()
                .filter(link ->
                        !link.revoked() && link.player().filter(player::equals).isPresent())
                .forEach(link -> facts.add(new SetUpFact.LinkRevoked(link.name())));
        if (event.isFrozen()) {
            String name = event.club(club).map(Club::name).orElse(club.code());
            facts.add(Notices.of(
                    event, Saying.of("notices.leaves").with("player", player).with("club", name)));
        }
        return facts;
    }
}
