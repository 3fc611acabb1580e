package tiewright.desk;

import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.HurtMarked;

/**
 * An official or the own captain marks a player as hurt or ill, or as well again. It bars nobody. Never stale: who presses "hurt"
 * saw no mark and who presses "well" saw one, so there is nothing that either could overwrite unseen.
 */
public record MarkHurt(PlayerId player, boolean hurt) implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptainOrOfficial(event, noted, by)
                .ownPlayer(player, "player")
                .kept(() -> List.of(new HurtMarked(player, hurt)));
    }

    @Override
    public boolean isNeverStale() {
        return true;
    }
}
