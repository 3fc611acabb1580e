package tiewright.lineup.tie;

import java.util.Arrays;
import tiewright.conditions.DeciderKind;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
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

    private EndWorths(int rubbers) {
        this.hasDecider = false;
        this.ends = new double[rubbers + 1][];
        this.ifDeciderWon = new double[rubbers + 1];
        this.ifDeciderLost = new double[rubbers + 1];
        for (int counted = 0; counted < ends.length; counted++) {
            ends[counted] = new double[counted + 1];
            if (counted % 2 == 0) {
                ends[counted][counted / 2] = 1;
            }
        }
    }

    /** Level rubbers are worth one, anything else nothing: the mean is the chance that they finish level. */
    static EndWorths level(int rubbers) {
        return new EndWorths(rubbers);
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
        if (isDecided(counted)) {
            int half = counted / 2;
            double level = decider * ifDeciderWon[counted] + (1 - decider) * ifDeciderLost[counted];
            sum += wins[half] * (level - worths[half]);
        }
        return sum;
    }

    private boolean isDecided(int counted) {
        return hasDecider && counted % 2 == 0;
    }

    /** The same in each of the first so many draws, all rubbers and the decider in the same world. */
    double[] each(DrawnChance[] rubbers, DrawnChance decider, int draws) {
        return each(wins(rubbers, draws), decider, draws);
    }

    /** @param wins chance of each number of rubbers won, in each draw */
    public double[] each(double[][] wins, DrawnChance decider, int draws) {
        int counted = wins.length - 1;
        double[] worth = new double[draws];
        for (int won = 0; won <= counted; won++) {
            addTo(worth, wins[won], ends[counted][won]);
        }
        if (isDecided(counted)) {
            double[] level = wins[counted / 2];
            double[] ours = decider.draws();
            double lost = ifDeciderLost[counted] - ends[counted][counted / 2];
            double more = ifDeciderWon[counted] - ifDeciderLost[counted];
            for (int i = 0; i < draws; i++) {
                worth[i] += level[i] * (lost + more * ours[i]);
            }
        }
        return worth;
    }

    private static void addTo(double[] sum, double[] what, double times) {
        for (int i = 0; times != 0 && i < sum.length; i++) {
            sum[i] += times * what[i];
        }
    }

    /** The chance of each number of rubbers won, in each of the first so many draws: a row for each number. */
    public static double[][] wins(DrawnChance[] rubbers, int draws) {
        double[][] wins = new double[rubbers.length + 1][draws];
        Arrays.fill(wins[0], 1);
        for (int rubber = 0; rubber < rubbers.length; rubber++) {
            double[] chance = rubbers[rubber].draws();
            for (int won = rubber + 1; won > 0; won--) {
                double[] here = wins[won];
                double[] before = wins[won - 1];
                for (int i = 0; i < draws; i++) {
                    here[i] += (before[i] - here[i]) * chance[i];
                }
            }
            double[] none = wins[0];
            for (int i = 0; i < draws; i++) {
                none[i] *= 1 - chance[i];
            }
        }
        return wins;
    }

    /** The least and the most that any end is worth with so many rubbers: no mean lies outside. */
    double within(int counted, double mean) {
        double least = Math.min(
                ifDeciderLost[counted], Arrays.stream(ends[counted]).min().orElseThrow());
        double most = Math.max(
                ifDeciderWon[counted], Arrays.stream(ends[counted]).max().orElseThrow());
        return Math.max(least, Math.min(most, mean));
    }
}
