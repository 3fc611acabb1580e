package tiewright.scoring;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What two rally chances make of a game: who wins it, how long it takes, how it ends, how much a rally matters.
 *
 * <p>The chance that the serving side wins a rally depends on the side that serves and on nothing else. Exact, no truncation: see
 * {@link Lattice}. Chances are fractions 0 to 1; side one is named first in scores. Immutable; one game to 11 takes some
 * microseconds.
 */
public final class Chain {
    /** Below this for both sides a game that needs a point on serve lasts longer than anybody plays. */
    private static final double LEAST_SERVE = 1e-6;

    private static final int MOST_POINTS = 999;

    private final Format format;
    private final ServeOrder order;
    private final Lattice lattice;
    private final double[] win;

    private Chain(Format format, ServeOrder order, double serve1, double serve2) {
        this.format = format;
        this.order = order;
        this.lattice = new Lattice(format, order, serve1, serve2);
        this.win = lattice.solve(new double[lattice.size()], 1);
    }

    /**
     * The chain of one doubles game.
     *
     * @param serve1 chance that side one wins a rally it serves
     * @param serve2 chance that side two wins a rally it serves
     * @throws IllegalArgumentException if a chance is not 0 to 1, or if the game would not end, see {@link #ends}
     */
    public static Chain of(Format format, double serve1, double serve2) {
        return of(format, ServeOrder.doubles(format), serve1, serve2);
    }

    /** As {@link #of(Format, double, double)} for other serving orders: side-out singles has one server a side. */
    static Chain of(Format format, ServeOrder order, double serve1, double serve2) {
        if (!(serve1 >= 0 && serve1 <= 1 && serve2 >= 0 && serve2 <= 1)) {
            throw new IllegalArgumentException("a serve chance is 0 to 1, not " + serve1 + " and " + serve2);
        }
        if (!ends(format, serve1, serve2)) {
            throw new IllegalArgumentException("a game of " + format.code()
                    + " does not end when neither side wins rallies on its serve: " + serve1 + ", " + serve2);
        }
        return new Chain(format, order, serve1, serve2);
    }

    /**
     * Does a game with these chances end? Not if neither side wins a rally on its own serve (less than one in a million)
     * and the game needs that: in side-out, with serve-last, and where one must be two ahead without a cap.
     */
    public static boolean ends(Format format, double serve1, double serve2) {
        boolean needsServe = format.kind() == Format.Kind.SIDE_OUT || format.serveLast() || format.isOpenEnded();
        return !needsServe || Math.max(serve1, serve2) >= LEAST_SERVE;
    }

    /** Chance that side one wins the game. */
    public double winChance(SideNo firstServer) {
        return win[lattice.index(0, 0, order.start(firstServer))];
    }

    /** Chance that side one wins from here. */
    public double winChance(GameState state) {
        check(state);
        if (state.isOver()) {
            return state.winner().equals(Optional.of(SideNo.ONE)) ? 1 : 0;
        }
        return win[index(state)];
    }

    /** Rallies of a whole game. */
    public Rallies rallies(SideNo firstServer) {
        return rallies(lattice.index(0, 0, order.start(firstServer)));
    }

    /** Rallies still to come. */
    public Rallies rallies(GameState state) {
        check(state);
        return state.isOver() ? new Rallies(0, 0) : rallies(index(state));
    }

    private Rallies rallies(int at) {
        double[] reward = new double[lattice.size()];
        Arrays.fill(reward, 1);
        double[] mean = lattice.solve(reward, 0);
        // E[T^2] = 1 + 2 E[T - 1] + E[(rest after one rally)^2]
        for (int i = 0; i < reward.length; i++) {
            reward[i] = 2 * mean[i] - 1;
        }
        double[] square = lattice.solve(reward, 0);
        return new Rallies(mean[at], Math.sqrt(Math.max(0, square[at] - mean[at] * mean[at])));
    }

    /**
     * Chance that the points ever stand so; for a final score the chance that the game ends with it. 0 for a score that
     * cannot be.
     *
     * @throws IllegalArgumentException if a side has more than 999 points
     */
    public double chanceOf(SideNo firstServer, Score score) {
        if (Math.max(score.home(), score.away()) > MOST_POINTS) {
            throw new IllegalArgumentException(
                    "a score of more than " + MOST_POINTS + " points is not worked out: " + score);
        }
        boolean possible = Legality.retired(format, score).isEmpty()
                || Legality.game(format, score).isEmpty();
        return possible ? lattice.reach(order.start(firstServer), score.home(), score.away()) : 0;
    }

    /** The chance of each final score in which no side has more than {@code most} points, side two's points and then side one's rising. */
    public Map<Score, Double> finalScores(SideNo firstServer, int most) {
        Map<Score, Double> chances =
                new TreeMap<>(Comparator.comparingInt(Score::away).thenComparingInt(Score::home));
        int top = Math.min(most, format.mostPoints());
        for (int loser = 0; loser < top; loser++) {
            int winner = format.winningScoreAgainst(loser);
            if (winner <= top) {
                for (SideNo side : SideNo.values()) {
                    Score score = side.score(winner, loser);
                    chances.put(score, chanceOf(firstServer, score));
                }
            }
        }
        return chances;
    }

    /** How much the next rally matters: chance to win the game after winning it less the chance after losing it. The same for both sides. */
    public double importance(GameState state) {
        check(state);
        return winChance(state.after(SideNo.ONE)) - winChance(state.after(SideNo.TWO));
    }

    private int index(GameState state) {
        return lattice.index(
                state.score().home(), state.score().away(), order.turn(state.serving(), state.serverNumber()));
    }

    private void check(GameState state) {
        if (!state.format().equals(format)) {
            throw new IllegalArgumentException(
                    "a state of " + state.format().code() + " in a chain of " + format.code());
        }
    }
}
