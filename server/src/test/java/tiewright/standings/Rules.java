package tiewright.standings;

import java.util.List;
import java.util.Optional;
import tiewright.conditions.RubberWeights;
import tiewright.conditions.TiePoints;
import tiewright.conditions.UnplayedTie;
import tiewright.conditions.WalkoverScore;

/** Conditions of a table as a test writes them. */
final class Rules {
    static final List<String> NAMED =
            List.of("overall-difference", "among-level-ratio", "head-to-head-points", "rubbers-won");

    /** Four rubbers and a decider, one game to 11, a tie won counts 1. */
    static TableRules of(String levelTeams) {
        return of(levelTeams, "1/0/0", shape(4, true, 1, 11));
    }

    static TableRules of(String levelTeams, String tiePoints) {
        return of(levelTeams, tiePoints, shape(4, true, 1, 11));
    }

    static TableRules of(String levelTeams, String tiePoints, TieShape shape) {
        return of(
                levelTeams, TiePoints.parse(tiePoints).orElseGet(() -> TiePoints.of(0, 0, 0)), Optional.empty(), shape);
    }

    static TableRules of(String levelTeams, TiePoints points, Optional<UnplayedTie> unplayed, TieShape shape) {
        return new TableRules(
                new PointsForTie(points, unplayed),
                Procedure.parse(levelTeams).orElseThrow(),
                shape,
                WalkoverScore.TARGET_ZERO);
    }

    /** Rubbers that weigh the same. */
    static TieShape tie(int rubbers, boolean stops, Games games, Optional<Games> decider) {
        return new TieShape(rubbers, stops, games, decider, RubberWeights.EQUAL);
    }

    static TieShape shape(int rubbers, boolean decider, int gamesToWin, int target) {
        Games games = new Games(gamesToWin, target, false, 2, target, true);
        return tie(rubbers, false, games, decider ? Optional.of(games) : Optional.empty());
    }

    private Rules() {}
}
