package tiewright.standings;

import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.TiePoints;
import tiewright.conditions.UnplayedTie;

/**
 * What a tie counts in the table, such as 1/0/0, 2/1/0 or a point for each rubber won.
 *
 * @param unplayed what a tie counts of which no rubber was played; empty where that makes no difference
 */
public record PointsForTie(TiePoints points, Optional<UnplayedTie> unplayed) {

    static PointsForTie of(Conditions conditions) {
        return new PointsForTie(conditions.tiePoints(), conditions.unplayedTie());
    }

    boolean countsGames() {
        return points.per() == TiePoints.Per.GAME;
    }

    /** One club's share of a tie of which something was played. */
    int played(Result result, int weightWon, int gamesWon) {
        int end =
                switch (result) {
                    case WON -> points.win();
                    case DRAWN -> points.draw();
                    case LOST, LOST_BY_BOTH -> points.loss();
                };
        return end
                + switch (points.per()) {
                    case TIE -> 0;
                    case RUBBER -> weightWon;
                    case GAME -> gamesWon;
                };
    }

    /** The same for a tie of which no rubber was played; one that is drawn, such as by sharing it, counts as any other. */
    int unplayed(Result result, int weightWon, int gamesWon) {
        return unplayed.filter(any -> result != Result.DRAWN)
                .map(each -> result == Result.WON ? each.win() : each.loss())
                .orElseGet(() -> played(result, weightWon, gamesWon));
    }
}
