package tiewright.http.visit;

import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;

/**
 * Whether a tie has a score that says how it was played. One that went to the other club because a club went home has rubbers
 * to nil for the bracket, and nobody was on court.
 */
public final class Scored {
    private Scored() {}

    public static boolean is(VisibleEvent event, Tie tie) {
        TieProgress progress = event.progress(tie);
        return !progress.rubbers().isEmpty() && (!event.isGone(tie) || progress.isAnythingPlayed());
    }
}
