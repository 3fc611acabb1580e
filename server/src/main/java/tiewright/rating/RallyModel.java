package tiewright.rating;

import tiewright.scoring.Chain;
import tiewright.scoring.Format;
import tiewright.scoring.RubberChance;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * What an edge in rallies makes of rallies, games and rubbers.
 *
 * <p>logit P(the serving side wins the rally) = s + e / 25, where e is the edge of the serving pair in rallies won per 100
 * above an even game. One 25th of a logit is one rally in a hundred at an even rally, and within 0.2 of one up to an edge
 * of 10. The rate s of two equal pairs is one of the {@link ServeRates}; where none are named, the plain ones.
 */
public final class RallyModel {
    static final double LOGIT_PER_RALLY = 0.04;

    private RallyModel() {}

    /** Chance that a pair with this edge wins a rally that it serves. */
    public static double serveChance(ServeRates rates, Format format, double edge) {
        return 1 / (1 + Math.exp(-serveLogit(rates, format) - LOGIT_PER_RALLY * edge));
    }

    public static double serveChance(Format format, double edge) {
        return serveChance(ServeRates.PLAIN, format, edge);
    }

    /** Logit of the chance that the serving side wins a rally between equal pairs. */
    static double serveLogit(ServeRates rates, Format format) {
        double base = rates.of(format.kind());
        return Math.log(base / (1 - base));
    }

    /** Chance that the pair with this edge wins the rubber, mean over who serves first. */
    public static double rubberChance(ServeRates rates, Format format, int bestOf, double edge) {
        return RubberChance.of(format, bestOf, serveChance(rates, format, edge), serveChance(rates, format, -edge));
    }

    public static double rubberChance(Format format, int bestOf, double edge) {
        return rubberChance(ServeRates.PLAIN, format, bestOf, edge);
    }

    /** Log of the chance that a game ends with this score, side one having the edge, mean over who serves first. */
    static double logChance(ServeRates rates, Format format, Score score, double edge) {
        Chain chain = Chain.of(format, serveChance(rates, format, edge), serveChance(rates, format, -edge));
        double chance = (chain.chanceOf(SideNo.ONE, score) + chain.chanceOf(SideNo.TWO, score)) / 2;
        return Math.log(Math.max(chance, Double.MIN_NORMAL));
    }
}
