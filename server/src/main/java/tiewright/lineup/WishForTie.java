package tiewright.lineup;

import java.util.List;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.TieId;

/**
 * A captain wishes that one of the own players must play, or must rest, in one tie.
 *
 * @param wish empty: no wish any more
 */
public record WishForTie(TieId tie, PlayerId player, Optional<PlayerWish> wish) implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptain(event, noted, by)
                .ownTie(tie)
                .ownPlayer(player, "player")
                .kept(() -> List.of(new PlayerWished(tie, noted.club(), player, wish)));
    }
}
