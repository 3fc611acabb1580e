package tiewright.rating;

import java.util.List;
import java.util.OptionalDouble;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.FormJudged;

/**
 * A captain judges one of the own players. Both empty takes the judgement back.
 *
 * @param form rallies won in 100 above an even game, from -{@value Judgement#MOST} to {@value Judgement#MOST}
 * @param doubt how far it could be wrong in two cases of three, above 0 and at most {@value Judgement#MOST}
 */
public record JudgeForm(PlayerId player, OptionalDouble form, OptionalDouble doubt) implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        NoteChecks checks = NoteChecks.byCaptain(event, noted, by).ownPlayer(player, "player");
        Judgement.check(checks, form, "form-" + player);
        Judgement.checkDoubt(checks, doubt, "doubt-" + player);
        return checks.kept(() -> List.of(new FormJudged(player, form, doubt)));
    }
}
