package tiewright.rating;

import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.FormJudged;

/**
 * A captain judges several of the own players at once: form is rallies won in 100 above an even game, from
 * -{@value Judgement#MOST} to {@value Judgement#MOST}; its doubt is how far it could be wrong in two cases of three, above 0 and
 * at most {@value Judgement#MOST}. Both empty takes a judgement back. Whoever is left out stays as noted.
 */
public record JudgeSquad(List<FormJudged> judgements) implements PrivateDecision {
    public JudgeSquad {
        judgements = List.copyOf(judgements);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        NoteChecks checks = NoteChecks.byCaptain(event, noted, by);
        for (FormJudged judged : judgements) {
            checks.ownPlayer(judged.player(), "form-" + judged.player());
            Judgement.check(checks, judged.form(), "form-" + judged.player());
            Judgement.checkDoubt(checks, judged.sd(), "doubt-" + judged.player());
        }
        return checks.kept(() -> judgements);
    }
}
