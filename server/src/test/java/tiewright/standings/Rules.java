package tiewright.standings;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

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
        int[] points =
                Arrays.stream(tiePoints.split("/")).mapToInt(Integer::parseInt).toArray();
        return new TableRules(
                new PointsForTie(points[0], points[1], points[2]),
                Procedure.parse(levelTeams).orElseThrow(),
                shape);
    }

    static TieShape shape(int rubbers, boolean decider, int gamesToWin, int target) {
        Games games = new Games(gamesToWin, target, false, 2, target, true);
        return new TieShape(rubbers, false, games, decider ? Optional.of(games) : Optional.empty());
    }

    private Rules() {}
}
