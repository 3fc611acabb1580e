package tiewright.http.visit;

import java.util.List;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.scoring.Score;

/** A rubber as those of one side say it: won or lost, own points first. */
public final class OwnResult {
    private OwnResult() {}

    /** Such as {@code won 11-7} or {@code lost 0-11 (walkover: Alder did not play)}. */
    public static String words(TieViews views, Tie tie, Side side, RubberScore score) {
        String result = views.outcome(score.winner(), side);
        List<Score> own = score.games().stream()
                .map(game -> side == Side.HOME ? game : game.swapped())
                .toList();
        String how = views.how(tie, score.how());
        return (result + " " + TieViews.score(own)).strip() + (how.isEmpty() ? "" : " (" + how + ")");
    }
}
