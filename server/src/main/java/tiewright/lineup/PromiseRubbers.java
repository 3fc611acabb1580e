package tiewright.lineup;

import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.Refusal;

/**
 * A captain promises one of the own players rubbers by the end of the day.
 *
 * @param rubbers at least so many, at most {@value RubbersPromised#MOST}; 0 takes the promise back
 */
public record PromiseRubbers(PlayerId player, int rubbers) implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptain(event, noted, by)
                .ownPlayer(player, "promise-player")
                .refuseIf(
                        rubbers < 0 || rubbers > RubbersPromised.MOST,
                        Refusal.of("notes.out-of-range")
                                .with("least", 0)
                                .with("most", RubbersPromised.MOST)
                                .at("promise-rubbers"))
                .kept(() -> List.of(new RubbersPromised(player, rubbers)));
    }
}
