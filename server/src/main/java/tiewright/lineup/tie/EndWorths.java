package tiewright.lineup.tie;

import tiewright.conditions.DeciderKind;
import tiewright.lineup.Aim;
import tiewright.lineup.TieRules;

/** What each way of ending the rubbers is worth under an aim, laid out for fast counting. */
public final class EndWorths {
    private final boolean hasDecider;
    private final double[][] ends; // by rubbers that count and rubbers won
    private final double[] ifDeciderWon; // by rubbers that count, which are level
    private final double[] ifDeciderLost;

    public EndWorths(Aim aim, TieRules rules) {
        this.hasDecider = rules.decider() != DeciderKind.NONE;
        this.ends = new double[rules.rubbers() + 1][];
        this.ifDeciderWon = new double[rules.rubbers() + 1];
        this.ifDeciderLost = new double[rules.rubbers() + 1];
        for (int counted = 0; counted < ends.length; counted++) {
            ends[counted] = new double[counted + 1];
            for (int won = 0; won <= counted; won++) {
                ends[counted][won] = aim.worth(new Aim.Ended(won, counted - won), rules.drawWorth());
            }
            int half = counted / 2;
            ifDeciderWon[counted] = aim.worth(new Aim.Ended(half + 1, half), rules.drawWorth());
            ifDeciderLost[counted] = aim.worth(new Aim.Ended(half, half + 1), rules.drawWorth());
        }
    }

    /**
     * The mean over how the tie may end.
     *
     * @param wins chance of each number of rubbers won
     * @param decider our chance in the decider
     */
    public double mean(double[] wins, double decider) {
        int counted = wins.length - 1;
        double[] worths = ends[counted];
        double sum = 0;
        for (int won = 0; won <= counted; won++) {
            sum += wins[won] * worths[won];
        }
        if (hasDecider && counted % 2 == 0) {
            int half = counted / 2;
            double level = decider * ifDeciderWon[counted] + (1 - decider) * ifDeciderLost[counted];
            sum += wins[half] * (level - worths[half]);
        }
        return sum;
    }
}
