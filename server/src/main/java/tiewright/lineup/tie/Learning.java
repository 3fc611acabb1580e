package tiewright.lineup.tie;

import tiewright.event.Pair;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.TieRules;

/**
 * What a rubber would teach of how strong a pair is, in bits.
 *
 * <p>With doubt v (variance of the pair's rating) and Fisher information I of winning or losing at this edge, the doubt
 * afterwards has variance v / (1 + v I) to first order, so that 1/2 log2(1 + v I) bits are gained (the information of an
 * experiment: D. V. Lindley, Annals of Mathematical Statistics 27, 1956, from memory; exact where the model is linear).
 * I = p'(e)^2 / (p (1 - p)), p the chance of the rubber at edge e.
 */
final class Learning {
    private static final double NUDGE = 0.25; // rallies per 100, for the slope

    private Learning() {}

    static double bits(LineupProblem problem, Pair ours, Pair theirs) {
        double doubt = problem.strengths().rating(ours).sd();
        return bits(doubt * doubt, information(problem, problem.edge(ours, theirs)));
    }

    static double bits(double variance, double information) {
        return Math.log1p(variance * information) / (2 * Math.log(2));
    }

    /** Of a rubber's winner about the edge, per squared rally in 100. */
    static double information(LineupProblem problem, double edge) {
        TieRules rules = problem.rules();
        double chance = problem.strengths().plainChance(rules.scoring(), rules.bestOf(), edge);
        double slope = (problem.strengths().plainChance(rules.scoring(), rules.bestOf(), edge + NUDGE)
                        - problem.strengths().plainChance(rules.scoring(), rules.bestOf(), edge - NUDGE))
                / (2 * NUDGE);
        double spread = chance * (1 - chance);
        return spread < 1e-12 ? 0 : slope * slope / spread;
    }
}
