package tiewright.scoring;

/**
 * The chance to win a rubber of one or more games, when nobody knows yet who serves first.
 *
 * <p>The first server of game 1 is each side with one half (a toss); after that the side that serves first changes from game to game.
 * Games are independent.
 */
public final class RubberChance {
    private RubberChance() {}

    /**
     * Chance that side one wins the rubber, mean over the first server.
     *
     * @param bestOf games in a rubber, odd
     * @param serve1 chance that side one wins a rally it serves
     * @param serve2 chance that side two wins a rally it serves
     * @throws IllegalArgumentException as {@link Chain#of}
     */
    public static double of(Format format, int bestOf, double serve1, double serve2) {
        Chain chain = Chain.of(format, serve1, serve2);
        return (of(chain, bestOf, SideNo.ONE) + of(chain, bestOf, SideNo.TWO)) / 2;
    }

    /** Chance that side one wins the rubber when this side serves first in game 1. */
    public static double of(Format format, int bestOf, double serve1, double serve2, SideNo firstServer) {
        return of(Chain.of(format, serve1, serve2), bestOf, firstServer);
    }

    private static double of(Chain chain, int bestOf, SideNo firstServer) {
        int majority = new Tally(bestOf).missing();
        double[] games = {chain.winChance(firstServer), chain.winChance(firstServer.other())};
        double[][] chance = new double[majority + 1][majority + 1]; // by games that side one, side two still need
        for (int two = 1; two <= majority; two++) {
            chance[0][two] = 1;
        }
        for (int one = 1; one <= majority; one++) {
            for (int two = 1; two <= majority; two++) {
                int played = 2 * majority - one - two;
                double win = games[played % 2];
                chance[one][two] = win * chance[one - 1][two] + (1 - win) * chance[one][two - 1];
            }
        }
        return chance[majority][majority];
    }
}
