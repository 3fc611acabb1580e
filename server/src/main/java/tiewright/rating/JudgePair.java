package tiewright.rating;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.ChemistryJudged;

/**
 * A captain judges what two of the own players win together beyond what each brings, and wishes them together or apart. Nothing of
 * either takes the note back.
 *
 * @param extra rallies in 100, from -{@value Judgement#MOST} to {@value Judgement#MOST}
 * @param doubt how far it could be wrong in two cases of three, above 0 and at most {@value Judgement#MOST}
 */
public record JudgePair(Pair pair, double extra, OptionalDouble doubt, Optional<PairWish> wish)
        implements PrivateDecision {
    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        NoteChecks checks = NoteChecks.byCaptain(event, noted, by)
                .ownPlayer(pair.first(), "pair-first")
                .ownPlayer(pair.second(), "pair-second");
        Judgement.check(checks, OptionalDouble.of(extra), "pair-extra");
        Judgement.checkDoubt(checks, doubt, "pair-doubt");
        return checks.kept(() -> List.of(new ChemistryJudged(pair, extra, doubt, wish)));
    }
}
