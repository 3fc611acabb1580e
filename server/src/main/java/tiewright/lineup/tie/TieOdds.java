package tiewright.lineup.tie;

/**
 * How a tie ends when its rubbers are independent: exact, by convolution.
 *
 * @param ahead chance to win more rubbers than the other club
 * @param level chance that the rubbers finish level
 */
public record TieOdds(double ahead, double level) {
    /** @param chances our chance in each rubber that is played or given away: 0 to 1, in any order */
    public static TieOdds of(double... chances) {
        double[] wins = wins(chances);
        double ahead = 0;
        for (int won = chances.length / 2 + 1; won <= chances.length; won++) {
            ahead += wins[won];
        }
        return new TieOdds(ahead, chances.length % 2 == 0 ? wins[chances.length / 2] : 0);
    }

    /**
     * The chance of each number of rubbers won.
     *
     * @return 0 to the number of rubbers
     */
    public static double[] wins(double... chances) {
        double[] wins = new double[chances.length + 1];
        wins[0] = 1;
        for (int rubber = 0; rubber < chances.length; rubber++) {
            double chance = chances[rubber];
            if (!(chance >= 0 && chance <= 1)) {
                throw new IllegalArgumentException("a chance is 0 to 1, not " + chance);
            }
            for (int won = rubber + 1; won > 0; won--) {
                wins[won] = wins[won] * (1 - chance) + wins[won - 1] * chance;
            }
            wins[0] *= 1 - chance;
        }
        return wins;
    }

    /**
     * Chance to win the tie.
     *
     * @param levelWorth what finishing level is worth: our chance in the decider, or without one the share of a win that a
     *     drawn tie counts
     */
    public double win(double levelWorth) {
        return ahead + level * levelWorth;
    }
}
