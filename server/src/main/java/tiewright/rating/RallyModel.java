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
 * of 10. The rate s of two equal pairs is an assumption of ours (common practice, no source): 0.47 where only the server
 * scores, because returning is the easier side of such a rally, and 0.50 in rally scoring.
 */
public final class RallyModel {
    static final double LOGIT_PER_RALLY = 0.04;
    private static final double SIDE_OUT_SERVE = 0.47;
    private static final double RALLY_SERVE = 0.50;

    private RallyModel() {}

    /** Chance that a pair with this edge wins a rally that it serves. */
    public static double serveChance(Format format, double edge) {
        return 1 / (1 + Math.exp(-serveLogit(format) - LOGIT_PER_RALLY * edge));
    }

    /** Logit of the chance that the serving side wins a rally between equal pairs. */
    static double serveLogit(Format format) {
        double base = format.kind() == Format.Kind.SIDE_OUT ? SIDE_OUT_SERVE : RALLY_SERVE;
        return Math.log(base / (1 - base));
    }

    /** Chance that the pair with this edge wins the rubber, mean over who serves first. */
    public static double rubberChance(Format format, int bestOf, double edge) {
        return RubberChance.of(format, bestOf, serveChance(format, edge), serveChance(format, -edge));
    }

    /** Log of the chance that a game ends with this score, side one having the edge, mean over who serves first. */
    static double logChance(Format format, Score score, double edge) {
        Chain chain = Chain.of(format, serveChance(format, edge), serveChance(format, -edge));
        double chance = (chain.chanceOf(SideNo.ONE, score) + chain.chanceOf(SideNo.TWO, score)) / 2;
        return Math.log(Math.max(chance, Double.MIN_NORMAL));
    }
}
