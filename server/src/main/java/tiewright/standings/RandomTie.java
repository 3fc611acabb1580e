package tiewright.standings;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tiewright.conditions.Conditions;
import tiewright.conditions.StopWhenDecided;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Format;
import tiewright.scoring.GameState;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** Plays ties between equals under the conditions, rally by rally, each rally even. */
final class RandomTie {
    private final Conditions conditions;
    private final TieShape shape;
    private final Random random;

    RandomTie(Conditions conditions, Random random) {
        this.conditions = conditions;
        this.shape = PoolTables.rules(conditions).shape();
        this.random = random;
    }

    TieScore play(TieId tie, ClubId home, ClubId away) {
        List<RubberScore> rubbers = new ArrayList<>();
        TieScore score = new TieScore(tie, home, away, rubbers, true, shape.weights());
        for (int number = 1; number <= shape.rubbers() && !isOver(score); number++) {
            rubbers.add(rubber(RubberNo.of(number), conditions.scoring(), conditions.bestOf()));
            score = score.with(rubbers, true);
        }
        if (shape.decider().isPresent() && score.winner().isEmpty()) {
            rubbers.add(rubber(RubberNo.DECIDER, conditions.deciderScoring(), 1));
        }
        return score.with(rubbers, true);
    }

    private boolean isOver(TieScore score) {
        int most = Math.max(score.weightWon(Side.HOME), score.weightWon(Side.AWAY));
        return conditions.stopWhenDecided() == StopWhenDecided.ALL
                && most > shape.weights().total(shape.rubbers()) / 2;
    }

    private RubberScore rubber(RubberNo number, Format format, int bestOf) {
        List<Score> games = new ArrayList<>();
        RubberScore score = new RubberScore(number, games, How.PLAYED);
        while (Math.max(score.gamesWon(Side.HOME), score.gamesWon(Side.AWAY)) <= bestOf / 2) {
            games.add(game(format));
            score = new RubberScore(number, games, How.PLAYED);
        }
        return score;
    }

    private Score game(Format format) {
        GameState state = GameState.start(format, side());
        while (!state.isOver()) {
            state = state.after(side());
        }
        return state.score();
    }

    private SideNo side() {
        return random.nextBoolean() ? SideNo.ONE : SideNo.TWO;
    }
}
