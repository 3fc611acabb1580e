package tiewright.event;

import java.util.List;
import java.util.Optional;
import tiewright.scoring.Score;

/**
 * The confirmed outcome of a rubber as the table counts it.
 *
 * @param games the points of each game in order, home first; empty only when the rubber is void
 */
public record RubberScore(RubberNo rubber, List<Score> games, How how) {
    public RubberScore {
        games = List.copyOf(games);
    }

    public int gamesWon(Side side) {
        int won = 0;
        for (Score game : games) {
            won += points(game, side) > points(game, side.other()) ? 1 : 0;
        }
        return won;
    }

    public int points(Side side) {
        return games.stream().mapToInt(game -> points(game, side)).sum();
    }

    /** The side that takes the rubber: the one that goes on after a walkover or retirement, else the one with more games. */
    public Optional<Side> winner() {
        if (how == How.VOID) {
            return Optional.empty();
        }
        if (how.missing().isPresent()) {
            return how.missing().map(Side::other);
        }
        return Side.ahead(gamesWon(Side.HOME) - gamesWon(Side.AWAY));
    }

    /** It was on court, to its end or until somebody gave it up. */
    public boolean isPlayed() {
        return how == How.PLAYED || how.isRetirement();
    }

    boolean isWonBy(Side side) {
        return winner().filter(side::equals).isPresent();
    }

    private static int points(Score game, Side side) {
        return side == Side.HOME ? game.home() : game.away();
    }
}
