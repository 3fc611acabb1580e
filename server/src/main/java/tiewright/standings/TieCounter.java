package tiewright.standings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tiewright.event.ClubId;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

/** Turns a finished tie into what it counts for. */
final class TieCounter {
    private final Map<ClubId, Integer> position = new HashMap<>();
    private final TableRules rules;

    TieCounter(List<ClubId> clubs, TableRules rules) {
        for (int i = 0; i < clubs.size(); i++) {
            position.put(clubs.get(i), i);
        }
        this.rules = rules;
    }

    int home(TieScore tie) {
        return Objects.requireNonNull(position.get(tie.home()));
    }

    int away(TieScore tie) {
        return Objects.requireNonNull(position.get(tie.away()));
    }

    CountedTie count(TieScore tie) {
        Result result = Result.ofLead(tie.weightWon(Side.HOME) - tie.weightWon(Side.AWAY));
        return new CountedTie(
                tie.tie(),
                home(tie),
                away(tie),
                result,
                side(tie, Side.HOME, result),
                side(tie, Side.AWAY, result.other()));
    }

    CountedTie lostByBoth(TieScore tie) {
        int points = tie.isAnythingPlayed()
                ? rules.points().played(Result.LOST_BY_BOTH, 0, 0)
                : rules.points().unplayed(Result.LOST_BY_BOTH, 0, 0);
        SideCount lost = new SideCount(points, 0, 0, 0, 0);
        return new CountedTie(tie.tie(), home(tie), away(tie), Result.LOST_BY_BOTH, lost, lost);
    }

    private SideCount side(TieScore tie, Side side, Result result) {
        int games =
                tie.rubbers().stream().mapToInt(rubber -> rubber.gamesWon(side)).sum();
        return new SideCount(
                tie.isAnythingPlayed()
                        ? rules.points().played(result, tie.weightWon(side), games)
                        : rules.points().unplayed(result, tie.weightWon(side), games),
                result == Result.WON ? 1 : 0,
                tie.rubbersWon(side),
                games,
                tie.rubbers().stream().mapToInt(rubber -> points(rubber, side)).sum());
    }

    private int points(RubberScore rubber, Side side) {
        Games kind = rules.shape().games(rubber.rubber());
        int sum = 0;
        for (Score game : rubber.games()) {
            sum += side == Side.HOME ? kind.counted(game.home(), game.away()) : kind.counted(game.away(), game.home());
        }
        return sum;
    }
}
