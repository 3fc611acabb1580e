package tiewright.timetable;

import tiewright.conditions.Conditions;
import tiewright.scoring.Chain;
import tiewright.scoring.Format;
import tiewright.scoring.Rallies;
import tiewright.scoring.SideNo;

/**
 * How long one rubber of two even pairs is played, turnover not included.
 *
 * <p>Rallies come from the scoring chain, with a serving side that wins 44 of 100 rallies (assumption of ours: the low end of
 * what is seen in doubles, so that games rather last longer than reckoned). The games of a rubber are independent and even.
 *
 * @param mean in minutes
 * @param sd in minutes
 */
public record RubberTime(double mean, double sd) {
    static final double SERVING_SIDE_WINS = 0.44;

    public static RubberTime of(Conditions conditions, Pace pace) {
        return of(conditions.scoring(), conditions.bestOf(), pace);
    }

    /**
     * @param bestOf games of a rubber, odd
     */
    public static RubberTime of(Format format, int bestOf, Pace pace) {
        Rallies game = Chain.of(format, SERVING_SIDE_WINS, SERVING_SIDE_WINS).rallies(SideNo.ONE);
        double[] games = games(bestOf);
        double minute = pace.secondsPerRally() / 60;
        double variance = games[0] * game.sd() * game.sd() + games[1] * game.mean() * game.mean();
        return new RubberTime(games[0] * game.mean() * minute, Math.sqrt(variance) * minute);
    }

    /** Minutes of play to reckon with, to the nearest whole one; at least 1. */
    public int minutes() {
        return Math.max(1, (int) Math.round(mean));
    }

    /** Mean and variance of the number of games of an even rubber. */
    private static double[] games(int bestOf) {
        int majority = bestOf / 2 + 1;
        double mean = 0;
        double square = 0;
        for (int n = majority; n <= bestOf; n++) {
            double chance = 2 * choose(n - 1, majority - 1) / Math.pow(2, n);
            mean += chance * n;
            square += chance * n * n;
        }
        return new double[] {mean, square - mean * mean};
    }

    private static double choose(int n, int k) {
        double ways = 1;
        for (int i = 1; i <= k; i++) {
            ways = ways * (n - k + i) / i;
        }
        return ways;
    }
}
